package limbway.sim.experiment.worlds;

/**
 * How many worlds are looked at and how closely.
 *
 * @param worlds number of worlds, 10 or more
 * @param replications how many times the days are lived in each, 1 or more
 * @param turned how many of the strongest inputs are followed to the point where the answer turns, 0 or more
 * @param turnReplications how many times the days are lived at each point on the way there, 1 or more
 * @param totalPoints points of each of the two samples from which total indices are estimated; 0 for none
 * @param seed master seed, 1 to 2147483647
 * @param threads threads to use, 1 or more; the result does not depend on it
 */
public record WorldSettings(
        int worlds, int replications, int turned, int turnReplications, int totalPoints, int seed, int threads) {

    /** Fewer worlds than this say nothing. */
    public static final int FEWEST = 10;

    /** How many inputs are followed unless something else is said. Assumption. */
    public static final int TURNED = 3;

    /** Inputs whose total indices are estimated, at most. */
    public static final int MOST_TOTAL = 8;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException naming the setting outside its range
     */
    public WorldSettings {
        require("worlds", worlds, FEWEST);
        require("replications", replications, 1);
        require("turned", turned, 0);
        require("turnReplications", turnReplications, 1);
        require("totalPoints", totalPoints, 0);
        require("seed", seed, 1);
        require("threads", threads, 1);
    }

    private static void require(String setting, int value, int least) {
        if (value < least) {
            throw new IllegalArgumentException(
                    "worlds: " + setting + " = " + value + ", allowed " + least + " to 2147483647");
        }
    }
}
