package limbway.reports.command;

import picocli.CommandLine.Option;

/** How many threads a long computation takes. */
final class ThreadOptions {

    @Option(
            names = "--threads",
            paramLabel = "N",
            converter = WholeNumber.class,
            description = "Threads to use; without it as many as the machine has. The result is the same.")
    private Integer threads;

    int count() {
        return threads == null ? Runtime.getRuntime().availableProcessors() : threads;
    }
}
