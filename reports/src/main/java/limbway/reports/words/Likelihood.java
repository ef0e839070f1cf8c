package limbway.reports.words;

/** How likely something is by chance alone, in words. */
public final class Likelihood {

    private static final double LEAST = 0.001;

    private Likelihood() {}

    /**
     * A p value with its sign.
     *
     * @param p 0 to 1
     * @return for example {@code p < 0.001} or {@code p = 0.012}; never more digits than mean something
     */
    public static String p(double p) {
        if (p < LEAST) {
            return "p < 0.001";
        }
        return "p = " + Decimals.fixed(p, p < 0.1 ? 3 : 2);
    }
}
