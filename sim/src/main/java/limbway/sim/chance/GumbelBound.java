package limbway.sim.chance;

/** Bounds on the number with the Gumbel distribution that belongs to an even number, from a table of steps. */
final class GumbelBound {

    private static final int STEPS = 4096;
    /** Far more than a logarithm is out by. */
    private static final double MARGIN = 1e-9;
    /** More than any even number below 1 gives: -log(-log(1 - 2^-54)) is 37.4. */
    private static final double GREATEST = 38;

    private static final GumbelBound TABLE = new GumbelBound();

    private final double[] above = new double[STEPS];

    private GumbelBound() {
        for (int step = 0; step < STEPS - 1; step++) {
            above[step] = -StrictMath.log(-StrictMath.log((step + 1.0) / STEPS)) + MARGIN;
        }
        above[STEPS - 1] = GREATEST;
    }

    /**
     * A bound from above.
     *
     * @param even a number from 0 to below 1
     * @return no less than -log(-log(even))
     */
    static double above(double even) {
        return TABLE.above[(int) (even * STEPS)];
    }
}
