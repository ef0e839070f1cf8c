package limbway.reports.command;

import java.nio.file.Path;

import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What a command is told that asks about all layouts of a scenario: the scenario, and where its answer goes. */
final class ScenarioOptions {

    @Parameters(paramLabel = "SCENARIO", description = "The scenario file.")
    Path scenario;

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
