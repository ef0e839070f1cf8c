package limbway.reports.command;

/** How a command ends, as the calling shell sees it. */
final class ExitCode {

    /** Done. */
    static final int DONE = 0;

    /** Done, and the audit found something that must be mended. */
    static final int MUST_MEND = 1;

    /** The input is wrong. */
    static final int WRONG_INPUT = 2;

    /** It could not be done. */
    static final int NOT_DONE = 3;

    private ExitCode() {}
}
