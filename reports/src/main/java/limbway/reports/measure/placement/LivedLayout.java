package limbway.reports.measure.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.sim.experiment.statistics.Interval;

/**
 * What was found of a layout by living in it.
 *
 * @param values by replication and criterion of {@link PlacingCriteria}, not a number where a replication gave none
 */
public record LivedLayout(List<double[]> values) {

    /** Keeps a copy of the list. */
    public LivedLayout {
        values = List.copyOf(values);
    }

    /**
     * One of the criteria.
     *
     * @param criterion its place among them
     * @return mean with its interval over the replications; empty where no replication gave a value
     */
    public Optional<Interval> by(int criterion) {
        List<Double> found = new ArrayList<>();
        for (double[] one : values) {
            if (!Double.isNaN(one[criterion])) {
                found.add(one[criterion]);
            }
        }
        return Interval.of(found);
    }

    /**
     * Mean of one of the criteria.
     *
     * @param criterion its place among them
     * @return the mean, 0 where there is no value
     */
    public double mean(int criterion) {
        return by(criterion).map(Interval::mean).orElse(0.0);
    }

    /**
     * This layout less another one under the same chance.
     *
     * @param other the other, in as many replications
     * @param criterion place of a criterion
     * @return mean difference with its interval over the pairs in which both have a value
     */
    public Optional<Interval> less(LivedLayout other, int criterion) {
        List<Double> differences = new ArrayList<>();
        for (int r = 0; r < Math.min(values.size(), other.values.size()); r++) {
            double difference = values.get(r)[criterion] - other.values.get(r)[criterion];
            if (!Double.isNaN(difference)) {
                differences.add(difference);
            }
        }
        return Interval.of(differences);
    }

    /**
     * Number of criteria.
     *
     * @return as many as {@link PlacingCriteria#of} gives
     */
    public int criteria() {
        return values.get(0).length;
    }
}
