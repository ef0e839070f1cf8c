package limbway.sim.experiment.statistics;

import java.util.Arrays;
import java.util.List;

/**
 * How much of the variance of an answer each input explains by itself, and how much with all it does together with others;
 * from two independent samples A and B and, for each input, A with that input taken from B.
 *
 * @param variance variance of the answer over A and B together
 * @param first first-order index of each input; by chance a little below 0 or above 1
 * @param total total index of each input, 0 or more
 * @param totalErrors standard error of each total index, with the variance taken as known
 * @source first order: Saltelli et al. 2010, Comput. Phys. Commun. 181:259-270, doi 10.1016/j.cpc.2009.09.018, table 2 (b);
 *     total: Jansen 1999, Comput. Phys. Commun. 117:35-43, doi 10.1016/S0010-4655(98)00154-4 (both from memory)
 * @validity inputs are independent
 */
public record SobolIndices(double variance, List<Double> first, List<Double> total, List<Double> totalErrors) {

    /** Keeps copies of the lists. */
    public SobolIndices {
        first = List.copyOf(first);
        total = List.copyOf(total);
        totalErrors = List.copyOf(totalErrors);
    }

    /**
     * Estimates the indices.
     *
     * @param a answers at the points of A, 2 or more
     * @param b answers at the points of B, as many
     * @param mixed answers [input][point] at the points of A with one input from B
     * @return the indices; all 0 where the answer is always the same
     * @throws IllegalArgumentException if there are not as many answers everywhere
     */
    public static SobolIndices of(double[] a, double[] b, double[][] mixed) {
        int n = a.length;
        boolean even = n >= 2 && b.length == n;
        for (double[] one : mixed) {
            even &= one.length == n;
        }
        if (!even) {
            throw new IllegalArgumentException("Sobol' indices: answers = " + n + " and " + b.length
                    + ", allowed 2 or more and as many everywhere");
        }
        double mean = 0;
        for (int i = 0; i < n; i++) {
            mean += (a[i] + b[i]) / (2 * n);
        }
        double squares = 0;
        for (int i = 0; i < n; i++) {
            squares += (a[i] - mean) * (a[i] - mean) + (b[i] - mean) * (b[i] - mean);
        }
        double variance = squares / (2 * n - 1);
        double[] first = new double[mixed.length];
        double[] total = new double[mixed.length];
        double[] errors = new double[mixed.length];
        for (int input = 0; variance > 0 && input < mixed.length; input++) {
            double together = 0;
            double apart = 0;
            double apartSquares = 0;
            for (int i = 0; i < n; i++) {
                double step = mixed[input][i] - a[i];
                // less the mean, which changes nothing on average and calms the estimate
                together += (b[i] - mean) * step;
                apart += step * step / 2;
                apartSquares += step * step * step * step / 4;
            }
            first[input] = together / n / variance;
            total[input] = apart / n / variance;
            double spread = Math.max(0, apartSquares / n - apart / n * (apart / n));
            errors[input] = Math.sqrt(spread / n) / variance;
        }
        return new SobolIndices(variance, listed(first), listed(total), listed(errors));
    }

    private static List<Double> listed(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }
}
