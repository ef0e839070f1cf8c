package limbway.sim.experiment.statistics;

/**
 * How a budget of replications is best shared among systems of which the best is to be found, by what is known of their means
 * and spreads.
 *
 * <p>For systems run under chance of their own, and for budgets that are not small: with few replications an even share can be
 * better, because these shares are those of a budget without end. Under the same chance use {@link KimNelson}.
 *
 * @source Chen, Lin, Yücesan and Chick 2000, Discrete Event Dyn. Syst. 10:251-270, doi 10.1023/A:1008349927281 (from memory)
 * @validity normal values; means and spreads are estimates, from 10 replications each or more
 */
public final class BudgetAllocation {

    private BudgetAllocation() {}

    /**
     * The share of each system, so that {@code N_i/N_j = ((s_i/d_i)/(s_j/d_j))²} for all but the best and
     * {@code N_b = s_b sqrt(sum N_i²/s_i²)}, where d is how far a mean is from the best.
     *
     * @param means means, the greatest is the best
     * @param deviations standard deviations, above 0
     * @return shares that add up to 1, in the order of the systems
     * @throws IllegalArgumentException if there are fewer than two systems, a deviation is not above 0, or two are equally best
     */
    public static double[] shares(double[] means, double[] deviations) {
        int n = means.length;
        if (n < 2 || deviations.length != n) {
            throw new IllegalArgumentException("allocation: " + n + " means and " + deviations.length
                    + " deviations, allowed two or more of each, as many of one as of the other");
        }
        int best = 0;
        for (int i = 1; i < n; i++) {
            best = means[i] > means[best] ? i : best;
        }
        double[] weight = new double[n];
        double squares = 0;
        for (int i = 0; i < n; i++) {
            if (!(deviations[i] > 0) || (i != best && means[i] == means[best])) {
                throw new IllegalArgumentException("allocation: system " + i + " has mean " + means[i]
                        + " and deviation " + deviations[i] + ", allowed one best mean and deviations above 0");
            }
            if (i != best) {
                double noise = deviations[i] / (means[best] - means[i]);
                weight[i] = noise * noise;
                squares += weight[i] * weight[i] / (deviations[i] * deviations[i]);
            }
        }
        weight[best] = deviations[best] * Math.sqrt(squares);
        double sum = 0;
        for (double one : weight) {
            sum += one;
        }
        for (int i = 0; i < n; i++) {
            weight[i] /= sum;
        }
        return weight;
    }
}
