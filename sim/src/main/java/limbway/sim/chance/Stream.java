package limbway.sim.chance;

/**
 * A stream of random numbers without a position: each number is a function of the key and a counter.
 *
 * @param key what the stream is for, mixed to 64 bits
 */
public record Stream(long key) {

    private static final double STEP = 0x1p-53;

    /**
     * A number spread evenly over 0 to 1.
     *
     * @param counter which number of the stream
     * @return above 0 and below 1
     */
    public double uniform(long counter) {
        return even(SplitMix64.at(key, counter));
    }

    /**
     * A number spread evenly over 0 to 1, one for each place at each decision.
     *
     * @param decision which decision
     * @param place number of a place's name, see {@link Name#key}
     * @return above 0 and below 1
     */
    public double uniform(long decision, long place) {
        return even(SplitMix64.at(SplitMix64.at(key, decision), place));
    }

    /**
     * A number with the standard Gumbel distribution, one for each place at each decision.
     *
     * @param decision which decision
     * @param place number of a place's name, see {@link Name#key}: layouts that share the place share its number
     * @return any real number; mean 0.5772, variance pi²/6
     */
    public double gumbel(long decision, long place) {
        return -StrictMath.log(-StrictMath.log(uniform(decision, place)));
    }

    /**
     * A bound on {@link #gumbel}, without its logarithms.
     *
     * @param decision which decision
     * @param place number of a place's name
     * @return no less than the number with the Gumbel distribution, and seldom much more
     */
    public double gumbelAtMost(long decision, long place) {
        return GumbelBound.above(uniform(decision, place));
    }

    private static double even(long bits) {
        // the middle of one of 2^53 equal steps, so that neither 0 nor 1 is met
        return ((bits >>> 11) + 0.5) * STEP;
    }
}
