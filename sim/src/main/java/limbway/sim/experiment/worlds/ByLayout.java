package limbway.sim.experiment.worlds;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

import limbway.sim.experiment.statistics.Interval;
import limbway.sim.experiment.statistics.PairedDifference;

/** Values of layouts that were lived in under the same chance. */
public final class ByLayout {

    private final double[][][] values;

    /**
     * Keeps values; they must not be changed afterwards.
     *
     * @param values value [layout][replication][criterion], not a number where there is none; as many replications and criteria
     *     for every layout
     */
    public ByLayout(double[][][] values) {
        this.values = values;
    }

    /**
     * How much more one layout has than another.
     *
     * @param a number of a layout
     * @param b number of the layout that is taken off
     * @param criterion number of the criterion
     * @return mean over the replications that give both; empty if none does
     */
    public OptionalDouble difference(int a, int b, int criterion) {
        return Interval.of(differences(a, b, criterion))
                .map(all -> OptionalDouble.of(all.mean()))
                .orElse(OptionalDouble.empty());
    }

    /** The difference with its chance, replication by replication; empty with fewer than two that give both. */
    Optional<PairedDifference> paired(int a, int b, int criterion) {
        return PairedDifference.of(column(a, criterion), column(b, criterion));
    }

    private double[] column(int layout, int criterion) {
        return Arrays.stream(values[layout]).mapToDouble(v -> v[criterion]).toArray();
    }

    /** Variance of that mean by chance alone, or empty with fewer than two replications. */
    OptionalDouble chanceVariance(int a, int b, int criterion) {
        List<Double> all = differences(a, b, criterion);
        if (all.size() < 2) {
            return OptionalDouble.empty();
        }
        double mean = difference(a, b, criterion).orElseThrow();
        double squares = 0;
        for (double value : all) {
            squares += (value - mean) * (value - mean);
        }
        return OptionalDouble.of(squares / (all.size() - 1) / all.size());
    }

    private List<Double> differences(int a, int b, int criterion) {
        return IntStream.range(0, values[a].length)
                .mapToObj(i -> values[a][i][criterion] - values[b][i][criterion])
                .filter(Double::isFinite)
                .toList();
    }

    @Override
    public String toString() {
        return Arrays.deepToString(values);
    }
}
