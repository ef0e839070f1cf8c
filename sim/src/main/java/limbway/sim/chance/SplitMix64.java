package limbway.sim.chance;

/**
 * The n-th number of a stream as a function of its key: the generator SplitMix64, read at any place.
 *
 * @source Steele, Lea and Flood 2014, doi 10.1145/2660193.2660195; the constants are those of java.util.SplittableRandom
 */
final class SplitMix64 {

    private static final long GAMMA = 0x9e3779b97f4a7c15L;
    private static final long FIRST_MULTIPLIER = 0xbf58476d1ce4e5b9L;
    private static final long SECOND_MULTIPLIER = 0x94d049bb133111ebL;

    private SplitMix64() {}

    /**
     * One number of a stream.
     *
     * @param key the stream
     * @param n place in the stream, from 0
     * @return 64 bits, those that {@code new SplittableRandom(key)} gives at its call {@code n + 1}
     */
    static long at(long key, long n) {
        long z = key + (n + 1) * GAMMA;
        z = (z ^ (z >>> 30)) * FIRST_MULTIPLIER;
        z = (z ^ (z >>> 27)) * SECOND_MULTIPLIER;
        return z ^ (z >>> 31);
    }
}
