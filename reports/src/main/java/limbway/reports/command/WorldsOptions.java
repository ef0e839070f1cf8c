package limbway.reports.command;

import picocli.CommandLine.Option;

import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.worlds.WorldSettings;

/** How many plausible worlds layouts are compared in, and how closely. */
final class WorldsOptions {

    /** How many times the days are lived at each point on the way to a reversal. Assumption. */
    private static final int TURN_REPLICATIONS = 10;

    @Option(
            names = "--worlds",
            paramLabel = "N",
            converter = WholeNumber.class,
            description =
                    "Also compare the layouts in so many plausible worlds, 10 or more, in which all that is not known "
                            + "differs together; 200 tell a share to plus or minus 7 points. Without it none.")
    private Integer worlds;

    @Option(
            names = "--world-replications",
            paramLabel = "N",
            defaultValue = "2",
            converter = WholeNumber.class,
            description =
                    "How many times the days are lived in each world; without it 2. With 1 it is not told how much is "
                            + "chance.")
    private int replications;

    @Option(
            names = "--world-reversals",
            paramLabel = "N",
            defaultValue = "3",
            converter = WholeNumber.class,
            description =
                    "How many of the strongest numbers are followed to the point where the answer turns; without it 3.")
    private int turned;

    @Option(
            names = "--world-totals",
            paramLabel = "N",
            converter = WholeNumber.class,
            description =
                    "Also tell what the eight strongest numbers do together, from ten times so many worlds; without it "
                            + "it is left out.")
    private Integer totalPoints;

    boolean areWanted() {
        return worlds != null;
    }

    /** The settings; refused if there are too few worlds to tell anything. */
    WorldSettings settings(RunSettings run) throws Refusal {
        if (worlds < WorldSettings.FEWEST) {
            throw Refusal.of(
                    "that is too few plausible worlds",
                    "--worlds " + worlds,
                    WorldSettings.FEWEST + " or more",
                    "give at least --worlds " + WorldSettings.FEWEST
                            + "; with 200 the share in which one layout has more is known to plus or minus 7 points");
        }
        return new WorldSettings(
                worlds,
                replications,
                turned,
                TURN_REPLICATIONS,
                totalPoints == null ? 0 : totalPoints,
                run.seed(),
                run.threads());
    }
}
