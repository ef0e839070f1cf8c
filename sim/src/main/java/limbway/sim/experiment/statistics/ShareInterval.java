package limbway.sim.experiment.statistics;

import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * A share of cases with its 95 % interval.
 *
 * @param share cases counted over all cases, 0 to 1
 * @param lo lower end, 0 to 1
 * @param hi upper end, 0 to 1
 * @param n all cases, 1 or more
 * @validity cases are independent; strata of a Latin hypercube make the true spread smaller, never systematically greater
 */
public record ShareInterval(double share, double lo, double hi, int n) {

    private static final double UPPER_TAIL = 0.975;

    /**
     * The score interval: near the stated confidence on average over all true shares.
     *
     * @param counted cases that are so, 0 to {@code n}
     * @param n all cases, 1 or more
     * @return share and interval
     * @throws IllegalArgumentException if the count is outside its range
     * @source Wilson 1927, J. Am. Stat. Assoc. 22:209-212, doi 10.1080/01621459.1927.10502953
     */
    public static ShareInterval wilson(int counted, int n) {
        if (!(n >= 1 && counted >= 0 && counted <= n)) {
            throw new IllegalArgumentException(
                    "share: counted = " + counted + ", n = " + n + ", allowed 0 to n, and n 1 or more");
        }
        double z = new NormalDistribution(null, 0, 1).inverseCumulativeProbability(UPPER_TAIL);
        double share = (double) counted / n;
        double middle = counted + z * z / 2;
        double half = z * Math.sqrt(n * share * (1 - share) + z * z / 4);
        return new ShareInterval(
                share, Math.max(0, (middle - half) / (n + z * z)), Math.min(1, (middle + half) / (n + z * z)), n);
    }
}
