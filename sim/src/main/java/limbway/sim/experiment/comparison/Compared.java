package limbway.sim.experiment.comparison;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import limbway.sim.experiment.statistics.Interval;
import limbway.sim.experiment.trial.Criterion;

/**
 * What a comparison of layouts found.
 *
 * @param layouts names of the layouts
 * @param criteria what they are compared in
 * @param required names of the criteria whose differences had to be known well enough
 * @param sample values of all layouts under the same chance
 * @param differences every pair of layouts in every criterion: by criterion, then by the first, then by the second layout; pairs
 *     without two replications in which both have a value are left out
 * @param stopped why it ended
 */
public record Compared(
        List<String> layouts,
        List<Criterion> criteria,
        Set<String> required,
        Sample sample,
        List<Difference> differences,
        Stopped stopped) {

    /** Keeps copies of the lists. */
    public Compared {
        layouts = List.copyOf(layouts);
        criteria = List.copyOf(criteria);
        required = Set.copyOf(required);
        differences = List.copyOf(differences);
    }

    /**
     * How many replications of each layout it rests on.
     *
     * @return 1 or more
     */
    public int replications() {
        return sample.replications();
    }

    /**
     * The mean of a criterion in a layout.
     *
     * @param layout number of the layout, from 0
     * @param criterion number of the criterion, from 0
     * @return mean with its interval, or empty if no replication gives a value
     */
    public Optional<Interval> mean(int layout, int criterion) {
        List<Double> values = new ArrayList<>();
        for (double value : sample.of(layout, criterion)) {
            if (Double.isFinite(value)) {
                values.add(value);
            }
        }
        return Interval.of(values);
    }

    /**
     * The differences in one criterion.
     *
     * @param criterion number of the criterion, from 0
     * @return every pair that has one
     */
    public List<Difference> in(int criterion) {
        return differences.stream().filter(d -> d.criterion() == criterion).toList();
    }

    /**
     * The difference of two layouts in a criterion.
     *
     * @param a number of a layout, from 0
     * @param b number of another one, greater than the first
     * @param criterion number of the criterion, from 0
     * @return the difference, or empty if it is not known
     */
    public Optional<Difference> between(int a, int b, int criterion) {
        return in(criterion).stream().filter(d -> d.a() == a && d.b() == b).findFirst();
    }

    /**
     * The required differences that are not known, because fewer than two replications give both layouts a value.
     *
     * @return by criterion, then by the first, then by the second layout
     */
    public List<Missing> missing() {
        List<Missing> missing = new ArrayList<>();
        for (int c = 0; c < criteria.size(); c++) {
            for (int a = 0; required.contains(criteria.get(c).name()) && a < layouts.size(); a++) {
                for (int b = a + 1; b < layouts.size(); b++) {
                    if (between(a, b, c).isEmpty()) {
                        missing.add(new Missing(a, b, c));
                    }
                }
            }
        }
        return missing;
    }

    /**
     * A difference that had to be known and is not.
     *
     * @param a number of the first layout, from 0
     * @param b number of the second layout, from 0
     * @param criterion number of the criterion, from 0
     */
    public record Missing(int a, int b, int criterion) {}

    /**
     * The required difference that is farthest from known well enough.
     *
     * @return the widest in relation to its target; empty if no required difference is known
     */
    public Optional<Difference> widest() {
        return differences.stream()
                .filter(d -> required.contains(criteria.get(d.criterion()).name()))
                .max(Comparator.comparingDouble(Difference::widthOverTarget));
    }
}
