package limbway.reports.command;

import java.nio.file.Path;

import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every command is told: the scenario, the layout, and where its answer goes. */
final class CommonOptions {

    @Parameters(paramLabel = "SCENARIO", description = "The scenario file.")
    Path scenario;

    @Option(
            names = "--variant",
            paramLabel = "NAME",
            description = "The layout to use; without it the layout as drawn.")
    String variant;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Also write the answer to FILE, for other programs to read.")
    Path json;

    @Option(names = "--trace", description = "If something unexpected happens, print where in the program.")
    boolean trace;

    @Option(names = "--help", usageHelp = true, description = "Print this text.")
    boolean help;
}
