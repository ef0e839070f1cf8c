package limbway.sim.experiment.statistics;

/**
 * When there are repetitions enough: half the width of an interval must not exceed a target, and this is looked at only now
 * and then, because looking after every repetition stops too often on lucky ones.
 *
 * @param precision greatest half-width of a share, as a share, above 0
 * @param relative greatest error of an amount in relation to its size, above 0
 * @param first repetitions before the first look, 10 or more
 * @param batch repetitions between looks, 1 or more
 * @source Law and Kelton, Simulation Modeling and Analysis, for the relative target and ten repetitions to begin with; from
 *     memory
 * @validity the interval that is reported after stopping covers a little less often than it says
 */
public record StoppingRule(double precision, double relative, int first, int batch) {

    /** Fewer tell too little of how much repetitions differ. */
    public static final int LEAST_FIRST = 10;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException naming what is outside its range
     */
    public StoppingRule {
        if (!(precision > 0)) {
            throw new IllegalArgumentException("stopping rule: precision = " + precision + ", allowed above 0");
        }
        if (!(relative > 0)) {
            throw new IllegalArgumentException("stopping rule: relative = " + relative + ", allowed above 0");
        }
        if (first < LEAST_FIRST) {
            throw new IllegalArgumentException(
                    "stopping rule: first = " + first + ", allowed " + LEAST_FIRST + " or more");
        }
        if (batch < 1) {
            throw new IllegalArgumentException("stopping rule: batch = " + batch + ", allowed 1 or more");
        }
    }

    /**
     * The greatest half-width of a share.
     *
     * @return the precision
     */
    public double targetOfShare() {
        return precision;
    }

    /**
     * The greatest half-width of an amount. The error is related to the true size, which is not known; dividing by one more
     * than the error makes up for relating it to the size that was found.
     *
     * @param size size that was found, 0 or more
     * @return {@code size * relative / (1 + relative)}
     */
    public double targetOfAmount(double size) {
        return size * relative / (1 + relative);
    }

    /**
     * When to look next.
     *
     * @param done repetitions so far, 0 or more
     * @param budget most repetitions, {@code first} or more
     * @return number of repetitions after which to look, at most the budget
     */
    public int nextLook(int done, int budget) {
        return Math.min(budget, done < first ? first : done + batch);
    }

    /**
     * How many repetitions it would take, if they go on to differ as much as they did.
     *
     * @param done repetitions so far, 1 or more
     * @param halfWidth half-width after these, 0 or more
     * @param target half-width that is wanted, above 0
     * @return {@code done * (halfWidth / target)^2}, rounded up; at least {@code done} if it is too wide
     */
    public static long repetitionsNeeded(int done, double halfWidth, double target) {
        double times = halfWidth / target;
        return (long) Math.ceil(done * times * times);
    }
}
