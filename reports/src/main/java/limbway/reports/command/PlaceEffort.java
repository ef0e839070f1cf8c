package limbway.reports.command;

import picocli.CommandLine.Option;

import limbway.sim.experiment.RunSettings;

/** How much is lived in to find the best, and how sure one wants to be. */
final class PlaceEffort {

    @Option(
            names = "--simulate",
            paramLabel = "N",
            defaultValue = "10",
            converter = WholeNumber.class,
            description = "How many combinations the group lives in, the best by expected travel; without it 10.")
    int simulate;

    @Option(
            names = "--confidence",
            paramLabel = "PERCENT",
            defaultValue = "95",
            converter = PlaceNumber.Confidence.class,
            description =
                    "Least probability, in per cent, of selecting the best of them if it leads by --indifference; without it "
                            + "95.")
    double confidence;

    @Option(
            names = "--indifference",
            paramLabel = "POINTS",
            defaultValue = "2",
            converter = PlaceNumber.Indifference.class,
            description =
                    "Smallest difference in the share of travel off the ground that matters, in percentage points; without "
                            + "it 2.")
    double indifference;

    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "10",
            converter = PlaceNumber.FirstStage.class,
            description = "Repetitions of each combination before any is dropped; without it 10.")
    private int replications;

    @Option(
            names = "--budget",
            paramLabel = "N",
            defaultValue = "500",
            converter = PlaceNumber.Budget.class,
            description = "Repetitions of all combinations together at most; without it 500.")
    int budget;

    @Option(
            names = "--fresh",
            paramLabel = "N",
            defaultValue = "20",
            converter = PlaceNumber.FirstStage.class,
            description = "Repetitions under fresh chance of the best and of the layout as it stands; without it 20.")
    int fresh;

    @Option(
            names = "--days",
            paramLabel = "N",
            defaultValue = "3",
            converter = WholeNumber.class,
            description = "Days in each repetition; without it 3.")
    private int days;

    @Option(
            names = "--worth",
            paramLabel = "on|off",
            defaultValue = "on",
            converter = OnOff.Reader.class,
            description = "Whether places are worth something beyond needs and energy; without it on.")
    OnOff worth;

    RunSettings settings(StartOptions start) {
        return start.settings(replications, days);
    }
}
