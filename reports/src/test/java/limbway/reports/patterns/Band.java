package limbway.reports.patterns;

import limbway.sim.experiment.statistics.Interval;

/**
 * What counts as met.
 *
 * @param low least value, or minus infinity
 * @param high greatest value, or infinity
 * @param wholeInterval whether the whole interval must lie within, as for a sign, or its mean only
 */
record Band(double low, double high, boolean wholeInterval) {

    private static final double POINTS = 0.15;

    /** A figure of a handful of animals, plus or minus 15 points (assumption of decision 22). */
    static Band around(double share) {
        return new Band(Math.max(0, share - POINTS), Math.min(1, share + POINTS), false);
    }

    static Band within(double low, double high) {
        return new Band(low, high, false);
    }

    static Band atMost(double high) {
        return new Band(Double.NEGATIVE_INFINITY, high, false);
    }

    static Band atLeast(double low) {
        return new Band(low, Double.POSITIVE_INFINITY, false);
    }

    /** A sign or an order: the whole interval is above 0. */
    static Band positive() {
        return new Band(0, Double.POSITIVE_INFINITY, true);
    }

    boolean holds(Interval found) {
        double spread = wholeInterval ? found.halfWidth().orElse(0) : 0;
        return wholeInterval
                ? found.mean() - spread > low && found.mean() + spread < high
                : low <= found.mean() && found.mean() <= high;
    }

    String text(Unit unit) {
        if (wholeInterval) {
            return "above 0";
        }
        if (Double.isInfinite(low)) {
            return "at most " + unit.number(high) + unit.sign();
        }
        if (Double.isInfinite(high)) {
            return "at least " + unit.number(low) + unit.sign();
        }
        return unit.number(low) + " to " + unit.number(high) + unit.sign();
    }
}
