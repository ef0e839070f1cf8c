package limbway.reports.measure.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.sim.experiment.statistics.Interval;

/**
 * What one factor does to one criterion, the mean over all values of the others.
 *
 * <p>Of a list: the mean at each value. Of a range: the ends of the straight line that fits best (least squares). Each is
 * worked out within every replication, so that intervals tell what chance does.
 *
 * @param factor what was varied
 * @param levels mean at each level, in their order; empty where nothing was measured there
 * @param lowest number of the level with the lowest mean
 * @param highest number of the level with the highest mean
 * @param between highest less lowest, paired by replication; empty where fewer than two levels were measured
 */
public record MainEffect(
        SweptFactor factor, List<Optional<Interval>> levels, int lowest, int highest, Optional<Interval> between) {

    /** Keeps a copy of the list. */
    public MainEffect {
        levels = List.copyOf(levels);
    }

    /**
     * Works an effect out.
     *
     * @param factor what was varied
     * @param number its number among the factors of the cases; -1 for the layout
     * @param cases everything that was lived in
     * @param criterion number of the criterion
     * @return the effect
     */
    static MainEffect of(SweptFactor factor, int number, List<SweptCase> cases, int criterion) {
        int replications = cases.get(0).replications();
        double[][] means = new double[replications][];
        for (int r = 0; r < replications; r++) {
            means[r] =
                    factor.isRange() ? line(number, cases, criterion, r) : means(factor, number, cases, criterion, r);
        }
        List<Optional<Interval>> levels = new ArrayList<>();
        int lowest = 0;
        int highest = 0;
        for (int level = 0; level < factor.levels().size(); level++) {
            levels.add(interval(means, level, -1));
            // any value takes the place of none
            if (levels.get(lowest).isEmpty() || mean(levels, level) < mean(levels, lowest)) {
                lowest = level;
            }
            if (levels.get(highest).isEmpty() || mean(levels, level) > mean(levels, highest)) {
                highest = level;
            }
        }
        return new MainEffect(
                factor,
                levels,
                lowest,
                highest,
                lowest == highest ? Optional.empty() : interval(means, highest, lowest));
    }

    private static double mean(List<Optional<Interval>> levels, int level) {
        return levels.get(level).map(Interval::mean).orElse(Double.NaN);
    }

    private static Optional<Interval> interval(double[][] means, int level, int less) {
        List<Double> values = new ArrayList<>();
        for (double[] ofReplication : means) {
            double value = ofReplication[level] - (less < 0 ? 0 : ofReplication[less]);
            if (!Double.isNaN(value)) {
                values.add(value);
            }
        }
        return Interval.of(values);
    }

    private static double[] means(
            SweptFactor factor, int number, List<SweptCase> cases, int criterion, int replication) {
        double[] sums = new double[factor.levels().size()];
        int[] counts = new int[sums.length];
        for (SweptCase one : cases) {
            double value = one.value(replication, criterion);
            if (!Double.isNaN(value)) {
                int level = number < 0 ? factor.levels().indexOf(one.layout()) : (int) one.position(number);
                sums[level] += value;
                counts[level]++;
            }
        }
        for (int level = 0; level < sums.length; level++) {
            sums[level] = counts[level] == 0 ? Double.NaN : sums[level] / counts[level];
        }
        return sums;
    }

    private static double[] line(int number, List<SweptCase> cases, int criterion, int replication) {
        double n = 0;
        double sumX = 0;
        double sumY = 0;
        for (SweptCase one : cases) {
            double value = one.value(replication, criterion);
            if (!Double.isNaN(value)) {
                n++;
                sumX += one.position(number);
                sumY += value;
            }
        }
        double xx = 0;
        double xy = 0;
        for (SweptCase one : cases) {
            double value = one.value(replication, criterion);
            if (!Double.isNaN(value)) {
                xx += (one.position(number) - sumX / n) * (one.position(number) - sumX / n);
                xy += (one.position(number) - sumX / n) * (value - sumY / n);
            }
        }
        double slope = xx > 0 ? xy / xx : Double.NaN;
        double start = sumY / n - slope * sumX / n;
        return new double[] {start, start + slope};
    }
}
