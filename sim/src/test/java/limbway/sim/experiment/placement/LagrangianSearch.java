package limbway.sim.experiment.placement;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The p-median of whole costs solved exactly another way: branch and bound on which candidates are open, bounded by relaxing
 * that each demand is served once, Lagrangian multipliers by subgradients (Cornuéjols, Fisher and Nemhauser 1977, Manage.
 * Sci. 23:789-810, doi 10.1287/mnsc.23.8.789, from memory).
 */
final class LagrangianSearch {

    private static final int STEPS = 300;

    private final double[][] cost;
    private final int p;
    private final int n;
    private double best = Double.POSITIVE_INFINITY;
    private int nodes;

    private LagrangianSearch(double[][] cost, int p) {
        this.cost = cost;
        this.p = p;
        this.n = cost[0].length;
    }

    static double optimum(double[][] cost, int p) {
        LagrangianSearch search = new LagrangianSearch(cost, p);
        double[] multipliers = new double[cost.length];
        for (int d = 0; d < cost.length; d++) {
            double[] sorted = cost[d].clone();
            Arrays.sort(sorted);
            multipliers[d] = sorted[1];
        }
        search.branch(new int[search.n], multipliers, STEPS);
        return search.best;
    }

    /** State of a candidate: 1 open, -1 closed, 0 not decided. */
    private void branch(int[] state, double[] start, int steps) {
        if (++nodes > 200_000) {
            throw new IllegalStateException("no optimum after " + nodes + " nodes");
        }
        double[] u = start.clone();
        double[] bestU = u.clone();
        double[] bestGain = null;
        double bound = Double.NEGATIVE_INFINITY;
        double scale = 1.5;
        int since = 0;
        for (int step = 0; step < steps; step++) {
            double[] gain = gains(u);
            int[] open = open(state, gain);
            if (open == null) {
                return;
            }
            best = Math.min(best, served(open));
            double value = Arrays.stream(u).sum();
            for (int c : open) {
                value += gain[c];
            }
            if (value > bound + 1e-9) {
                bound = value;
                bestU = u.clone();
                bestGain = gain;
                since = 0;
            } else if (++since == 15) {
                scale /= 2;
                since = 0;
            }
            // costs are whole, so nothing between the bound and the next whole number is left
            if (Math.ceil(bound - 1e-6) >= best) {
                return;
            }
            move(u, open, scale, value);
        }
        int next = -1;
        int[] open = open(state, bestGain);
        for (int c : open) {
            if (state[c] == 0 && (next < 0 || bestGain[c] < bestGain[next])) {
                next = c;
            }
        }
        if (next < 0) {
            return;
        }
        for (int value : new int[] {1, -1}) {
            int[] then = state.clone();
            then[next] = value;
            branch(then, bestU, 60);
        }
    }

    private double[] gains(double[] u) {
        double[] gain = new double[n];
        for (int c = 0; c < n; c++) {
            for (int d = 0; d < cost.length; d++) {
                gain[c] += Math.min(0, cost[d][c] - u[d]);
            }
        }
        return gain;
    }

    private int[] open(int[] state, double[] gain) {
        int[] fixed = IntStream.range(0, n).filter(c -> state[c] == 1).toArray();
        int[] free = IntStream.range(0, n)
                .filter(c -> state[c] == 0)
                .boxed()
                .sorted((a, b) -> Double.compare(gain[a], gain[b]))
                .mapToInt(c -> c)
                .toArray();
        if (fixed.length > p || fixed.length + free.length < p) {
            return null;
        }
        int[] open = Arrays.copyOf(fixed, p);
        System.arraycopy(free, 0, open, fixed.length, p - fixed.length);
        return open;
    }

    private double served(int[] open) {
        double sum = 0;
        for (double[] row : cost) {
            sum += Arrays.stream(open).mapToDouble(c -> row[c]).min().orElseThrow();
        }
        return sum;
    }

    private void move(double[] u, int[] open, double scale, double value) {
        double[] slope = new double[cost.length];
        double norm = 0;
        for (int d = 0; d < cost.length; d++) {
            slope[d] = 1;
            for (int c : open) {
                slope[d] -= cost[d][c] < u[d] ? 1 : 0;
            }
            norm += slope[d] * slope[d];
        }
        if (norm == 0) {
            return;
        }
        double length = scale * (best * 1.02 - value) / norm;
        for (int d = 0; d < u.length; d++) {
            u[d] += length * slope[d];
        }
    }
}
