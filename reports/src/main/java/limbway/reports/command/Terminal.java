package limbway.reports.command;

import java.io.Console;

/** Tells whether somebody watches the output as it comes. */
final class Terminal {

    private Terminal() {}

    /** Up to Java 21 there is a console only on a terminal; from 22 on the console says itself whether it is one. */
    @SuppressWarnings("SystemConsoleNull")
    static boolean isWatched() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (Boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException e) {
            return true;
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }
}
