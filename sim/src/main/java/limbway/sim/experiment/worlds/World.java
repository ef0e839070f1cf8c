package limbway.sim.experiment.worlds;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

import limbway.sim.experiment.statistics.Interval;

/**
 * One plausible world and what came of it.
 *
 * @param number which of the worlds drawn, from 1
 * @param values values of all inputs by their names
 * @param found value [layout][replication][criterion], not a number where there is none
 */
public record World(int number, Map<String, Double> values, double[][][] found) {

    /**
     * How much more one layout has than another.
     *
     * @param a number of a layout
     * @param b number of the layout that is taken off
     * @param criterion number of the criterion
     * @return mean over the replications that give both; empty if none does
     */
    public OptionalDouble difference(int a, int b, int criterion) {
        return mean(differences(found, a, b, criterion));
    }

    /** Variance of that mean by chance alone, or empty with fewer than two replications. */
    OptionalDouble chanceVariance(int a, int b, int criterion) {
        List<Double> all = differences(found, a, b, criterion);
        if (all.size() < 2) {
            return OptionalDouble.empty();
        }
        double mean = mean(all).orElseThrow();
        double squares = 0;
        for (double value : all) {
            squares += (value - mean) * (value - mean);
        }
        return OptionalDouble.of(squares / (all.size() - 1) / all.size());
    }

    static OptionalDouble mean(List<Double> values) {
        return Interval.of(values).map(all -> OptionalDouble.of(all.mean())).orElse(OptionalDouble.empty());
    }

    static List<Double> differences(double[][][] found, int a, int b, int criterion) {
        return java.util.stream.IntStream.range(0, found[a].length)
                .mapToObj(i -> found[a][i][criterion] - found[b][i][criterion])
                .filter(Double::isFinite)
                .toList();
    }
}
