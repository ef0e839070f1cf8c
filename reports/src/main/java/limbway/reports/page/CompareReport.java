package limbway.reports.page;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import limbway.reports.data.CompareInfo;
import limbway.reports.measure.Measures;
import limbway.reports.measure.criterion.DesignCriterion;
import limbway.sim.experiment.comparison.Compared;
import limbway.sim.experiment.comparison.Difference;
import limbway.sim.experiment.statistics.Interval;

/**
 * Everything that is told of a comparison of layouts.
 *
 * @param info how it was made
 * @param criteria what the layouts are compared in, in the order of the comparison; the first is the one they are ranked by
 * @param compared what was found
 * @param alone the same layouts under the same chance with needs and energy alone; empty if that was not reached, or if the
 *     comparison itself is without worth
 * @param supplements further parts of the answer
 * @param watched the first repetition of each layout that can be watched, best layout first; empty where none was lived to the end
 */
public record CompareReport(
        CompareInfo info,
        List<DesignCriterion> criteria,
        Compared compared,
        Optional<Compared> alone,
        List<Supplement> supplements,
        List<Measures> watched) {

    /** As many layouts as can be told apart side by side. */
    public static final int MOST_WATCHED = 4;

    /** Keeps copies of the lists. */
    public CompareReport {
        criteria = List.copyOf(criteria);
        supplements = List.copyOf(supplements);
        watched = List.copyOf(watched);
    }

    /**
     * The same report with one more part.
     *
     * @param supplement what is told besides
     * @return a copy
     */
    public CompareReport with(Supplement supplement) {
        return new CompareReport(
                info,
                criteria,
                compared,
                alone,
                Stream.concat(supplements.stream(), Stream.of(supplement)).toList(),
                watched);
    }

    /**
     * The same report with repetitions that can be watched.
     *
     * @param repetitions one for each layout that is shown, best layout first
     * @return a copy
     */
    public CompareReport watching(List<Measures> repetitions) {
        return new CompareReport(info, criteria, compared, alone, supplements, repetitions);
    }

    /**
     * The layouts in order.
     *
     * @return numbers of the layouts, most travel off the ground first; without travel last
     */
    public List<Integer> ranked() {
        return IntStream.range(0, compared.layouts().size())
                .boxed()
                .sorted(Comparator.comparingDouble(layout -> -mean(layout, 0)))
                .toList();
    }

    private double mean(int layout, int criterion) {
        return compared.mean(layout, criterion).map(Interval::mean).orElse(-1.0);
    }

    /** The layout with the best mean in a criterion, or empty where none is better than another. */
    Optional<Integer> best(int criterion) {
        List<Integer> known = IntStream.range(0, compared.layouts().size())
                .filter(layout -> compared.mean(layout, criterion).isPresent())
                .boxed()
                .toList();
        Optional<Integer> best = known.stream().reduce((one, next) -> isBetter(next, one, criterion) ? next : one);
        return best.filter(winner -> known.stream().anyMatch(other -> isBetter(winner, other, criterion)));
    }

    private boolean isBetter(int layout, int other, int criterion) {
        return criteria.get(criterion)
                .wish()
                .isBetter(
                        compared.mean(layout, criterion).orElseThrow().mean(),
                        compared.mean(other, criterion).orElseThrow().mean());
    }

    /** How a layout differs from another one, whichever of them comes first. */
    static Optional<Difference> between(Compared compared, int layout, int other, int criterion) {
        return layout < other ? compared.between(layout, other, criterion) : compared.between(other, layout, criterion);
    }
}
