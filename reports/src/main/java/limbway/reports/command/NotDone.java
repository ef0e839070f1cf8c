package limbway.reports.command;

/** Something outside the question went wrong; the message says what was saved. */
final class NotDone extends Exception {

    private static final long serialVersionUID = 1;

    NotDone(String message) {
        super(message);
    }
}
