package limbway.reports.command;

import java.io.PrintWriter;
import java.io.StringWriter;

import picocli.CommandLine;
import picocli.CommandLine.ParseResult;

/** Ends a command that could not be finished with a message instead of a stack of calls. */
final class Mishaps {

    private Mishaps() {}

    static int explain(Exception mishap, CommandLine command, ParseResult parsed) {
        PrintWriter err = command.getErr();
        if (mishap instanceof Refusal || mishap instanceof NotDone) {
            err.print(mishap.getMessage());
            err.flush();
            return mishap instanceof Refusal ? ExitCode.WRONG_INPUT : ExitCode.NOT_DONE;
        }
        err.print("limbway: something unexpected happened, which is a fault of the program: " + mishap);
        if (parsed.asCommandLineList().stream()
                .anyMatch(part -> part.getParseResult().hasMatchedOption("--trace"))) {
            StringWriter trace = new StringWriter();
            mishap.printStackTrace(new PrintWriter(trace));
            err.print("\n" + trace);
        } else {
            err.print(" (--trace shows where)");
        }
        err.println();
        err.flush();
        return ExitCode.NOT_DONE;
    }
}
