package limbway.reports.measure;

import limbway.model.route.Way;

/** What travel is counted by. */
public enum Aspect {
    /** Metres of path. */
    DISTANCE("distance", "m"),
    /** Seconds on the way. */
    TIME("time", "s"),
    /** Energy of the moves. */
    ENERGY("energy", "J");

    private final String word;
    private final String unit;

    Aspect(String word, String unit) {
        this.word = word;
        this.unit = unit;
    }

    /**
     * The word used in tables and answers.
     *
     * @return distance, time or energy
     */
    public String word() {
        return word;
    }

    /**
     * The unit of the amounts.
     *
     * @return an SI unit
     */
    public String unit() {
        return unit;
    }

    /**
     * The amount of a whole way.
     *
     * @param way a way
     * @return metres, seconds or joules
     */
    public double of(Way way) {
        return switch (this) {
            case DISTANCE -> way.lengthM();
            case TIME -> way.seconds();
            case ENERGY -> way.milliJ() / 1000.0;
        };
    }

    /**
     * The amount off the ground.
     *
     * @param way a way
     * @return metres, seconds or joules, not more than {@link #of}
     */
    public double offGround(Way way) {
        return switch (this) {
            case DISTANCE -> way.offGroundM();
            case TIME -> way.offGroundSeconds();
            case ENERGY -> way.offGroundMilliJ() / 1000.0;
        };
    }
}
