package limbway.reports.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

import limbway.reports.words.Cautions;

/** The command line. */
@Command(
        name = "limbway",
        description = "Which way will an ape take through an enclosure, and what keeps it off the ground?",
        versionProvider = Version.class,
        subcommands = {
            CheckCommand.class,
            RunCommand.class,
            ExplainCommand.class,
            CompareCommand.class,
            PlaceCommand.class,
            LinkCommand.class,
            SweepCommand.class,
            ScreenCommand.class,
            ShadeCommand.class,
            LessonCommand.class,
            GraphCommand.class
        },
        synopsisHeading = "Use: ",
        customSynopsis = "limbway COMMAND SCENARIO [options]",
        optionListHeading = "%nOptions:%n",
        commandListHeading = "%nCommands:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  limbway check yard.yaml",
            "  limbway run yard.yaml --out yard-report",
            "  limbway explain yard.yaml --body \"adult female\" --from nest-1 --to hatch",
            "  limbway compare yard.yaml --out yard-compare",
            "  limbway place yard.yaml --out yard-place",
            "  limbway link yard.yaml --out yard-links",
            "  limbway sweep sweep-yard.yaml --out yard-sweep",
            "  limbway screen yard.yaml --out yard-screen",
            "  limbway shade yard.yaml --out yard-shade",
            "  limbway lesson yard.yaml --out yard-lesson",
            "",
            "Exit code: 0 done; 1 done, and something must be mended; 2 the input is wrong; 3 it could not be done.",
            "",
            Cautions.IN_SHORT
        })
public final class Limbway implements Runnable {

    @Option(names = "--help", usageHelp = true, description = "Print this text.")
    boolean help;

    @Option(names = "--version", versionHelp = true, description = "Print the version.")
    boolean version;

    @Spec
    private CommandSpec spec;

    private Limbway() {}

    /**
     * Runs one command and ends the process.
     *
     * @param args the command, the scenario and the options
     */
    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(out, err, args));
    }

    /**
     * Runs one command.
     *
     * @param out where answers go
     * @param err where progress and messages go
     * @param args the command, the scenario and the options
     * @return exit code: 0 done; 1 something must be mended; 2 the input is wrong; 3 it could not be done
     */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        CommandLine line = new CommandLine(new Limbway());
        line.setOut(out).setErr(err);
        line.setParameterExceptionHandler(Mistakes::explain);
        line.setExecutionExceptionHandler(Mishaps::explain);
        line.setUsageHelpWidth(110);
        line.setCaseInsensitiveEnumValuesAllowed(false);
        int code;
        try {
            code = line.execute(args);
        } catch (OutOfMemoryError full) {
            err.println("limbway: this needs more memory than Java was given");
            err.println("  mend     start it with java -Xmx8g -jar ..., or describe a smaller part of the enclosure");
            code = ExitCode.NOT_DONE;
        }
        out.flush();
        err.flush();
        return code;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "no command given");
    }
}
