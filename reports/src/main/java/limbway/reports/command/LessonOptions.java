package limbway.reports.command;

import java.nio.file.Path;
import java.util.List;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import limbway.sim.experiment.RunSettings;

/** What a lesson is to be about, and how long the days for it are lived. */
final class LessonOptions {

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "out",
            description = "Folder to write into; without it a folder called out.")
    Path out;

    @Option(
            names = "--variants",
            paramLabel = "NAMES",
            description = "Other layouts to compare and to choose from, divided by commas; without it all of the file.")
    List<String> variants;

    @Option(
            names = "--body",
            paramLabel = "BODY",
            description =
                    "Who travels, a body of the group; without it, and without --from and --to, the trip with most "
                            + "metres on the ground that one change can turn.")
    String body;

    @Option(
            names = "--from",
            paramLabel = "PLACE",
            description = "Where the trip starts, a place of the file, by name.")
    String from;

    @Option(names = "--to", paramLabel = "PLACE", description = "Where it ends: another of them.")
    String to;

    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "4",
            converter = WholeNumber.class,
            description = "How many times the days are lived in each layout; without it 4, enough for a lesson only.")
    private int replications;

    @Option(
            names = "--days",
            paramLabel = "N",
            defaultValue = "2",
            converter = WholeNumber.class,
            description = "Days in each repetition; without it 2.")
    private int days;

    @Mixin
    private StartOptions start;

    RunSettings settings() {
        return start.settings(replications, days);
    }
}
