package limbway.model.shade;

/**
 * One roof of the family in the frame of its deck.
 *
 * @param riseM height above the deck [m]
 * @param a0 lower end along the first axis [m]
 * @param b0 lower end along the second axis [m]
 * @param a1 upper end along the first axis [m]
 * @param b1 upper end along the second axis [m]
 * @param screens one bit for each {@link RoofSide} that carries a screen, by ordinal
 */
record RoofPlan(double riseM, double a0, double b0, double a1, double b1, int screens) {

    /** A ray must pass this far within an edge to count, so that the audit with its own rounding agrees [m]. */
    private static final double WITHIN_M = 1e-6;

    boolean has(RoofSide side) {
        return (screens >> side.ordinal() & 1) != 0;
    }

    double areaM2() {
        double area = (a1 - a0) * (b1 - b0);
        if (has(RoofSide.RIGHT)) {
            area += (b1 - b0) * riseM;
        }
        if (has(RoofSide.LEFT)) {
            area += (b1 - b0) * riseM;
        }
        if (has(RoofSide.FAR)) {
            area += (a1 - a0) * riseM;
        }
        if (has(RoofSide.NEAR)) {
            area += (a1 - a0) * riseM;
        }
        return area;
    }

    /** How far the middle of the roof lies from a place of the frame, squared. */
    double offCentre2(double a, double b) {
        double da = (a0 + a1) / 2 - a;
        double db = (b0 + b1) / 2 - b;
        return da * da + db * db;
    }

    /**
     * Whether it keeps the sun from a point.
     *
     * @param a place along the first axis [m]
     * @param b place along the second axis [m]
     * @param aboveM height above the deck [m]
     * @param runA way of the ray to the sun along the first axis for each metre that it rises
     * @param runB the same along the second axis
     */
    boolean shades(double a, double b, double aboveM, double runA, double runB) {
        double rise = riseM - aboveM;
        if (!(rise > 0)) {
            return false;
        }
        if (within(a + rise * runA, a0, a1) && within(b + rise * runB, b0, b1)) {
            return true;
        }
        return screens != 0
                && (isScreenedAlongA(a, b, aboveM, runA, runB) || isScreenedAlongB(a, b, aboveM, runA, runB));
    }

    private boolean isScreenedAlongA(double a, double b, double aboveM, double runA, double runB) {
        return (has(RoofSide.RIGHT) && crosses(a1 - a, runA, aboveM, b, runB, b0, b1))
                || (has(RoofSide.LEFT) && crosses(a0 - a, runA, aboveM, b, runB, b0, b1));
    }

    private boolean isScreenedAlongB(double a, double b, double aboveM, double runA, double runB) {
        return (has(RoofSide.FAR) && crosses(b1 - b, runB, aboveM, a, runA, a0, a1))
                || (has(RoofSide.NEAR) && crosses(b0 - b, runB, aboveM, a, runA, a0, a1));
    }

    /** Whether a ray meets an upright screen that is {@code away} metres off and reaches from {@code low} to {@code high}. */
    private boolean crosses(
            double away, double run, double aboveM, double along, double runAlong, double low, double high) {
        if (run == 0 || away * run <= 0) {
            return false;
        }
        double risen = away / run;
        return within(aboveM + risen, 0, riseM) && within(along + risen * runAlong, low, high);
    }

    private static boolean within(double value, double low, double high) {
        return value >= low + WITHIN_M && value <= high - WITHIN_M;
    }
}
