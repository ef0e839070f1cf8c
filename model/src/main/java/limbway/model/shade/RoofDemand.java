package limbway.model.shade;

import java.util.List;

/**
 * What is missing at one moment of breach.
 *
 * @param sunDeg height of the sun above the level
 * @param runEast way of a ray to the sun to the east for each metre that it rises
 * @param runNorth the same to the north
 * @param wanted platforms that must be shaded besides those that are, 1 or more
 * @param open the platforms in the sun
 */
record RoofDemand(double sunDeg, double runEast, double runNorth, int wanted, List<OpenDeck> open) {

    /** A platform in the sun, and which of its points are lit. */
    static final class OpenDeck {
        private final int platform;
        private final int missing;
        private final int[] lit;

        /**
         * A platform in the sun.
         *
         * @param platform place in the list of platforms
         * @param missing how many of its lit points must be shaded for the platform to count, 1 or more
         * @param lit its points in the sun; not copied, since there may be millions
         */
        OpenDeck(int platform, int missing, int[] lit) {
            this.platform = platform;
            this.missing = missing;
            this.lit = lit;
        }

        int platform() {
            return platform;
        }

        int missing() {
            return missing;
        }

        int litCount() {
            return lit.length;
        }

        int lit(int i) {
            return lit[i];
        }
    }

    boolean leavesOpen(int platform) {
        return open.stream().anyMatch(deck -> deck.platform() == platform);
    }

    int missingAt(int platform) {
        return open.stream()
                .filter(deck -> deck.platform() == platform)
                .mapToInt(OpenDeck::missing)
                .sum();
    }
}
