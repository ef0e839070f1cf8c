package limbway.reports.measure.sweep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import limbway.reports.measure.criterion.DesignCriterion;
import limbway.reports.measure.criterion.Wish;
import limbway.sim.experiment.statistics.Interval;

/**
 * All that came out of a sweep.
 *
 * @param factors what was varied
 * @param layouts names of the layouts that were lived in at each point
 * @param criteria what was measured, in the order of the values of the cases
 * @param cases each layout at each point, in order of the points
 */
public record Swept(
        List<SweptFactor> factors, List<String> layouts, List<DesignCriterion> criteria, List<SweptCase> cases) {

    /** Stands for all values of an assumed number. */
    public static final String ALL = "mean over all";

    /** Keeps copies of the lists. */
    public Swept {
        factors = List.copyOf(factors);
        layouts = List.copyOf(layouts);
        criteria = List.copyOf(criteria);
        cases = List.copyOf(cases);
    }

    /**
     * What can be chosen, by one criterion: points that differ in nothing but assumed numbers are taken together, because
     * nobody can choose those.
     *
     * @param criterion one of {@link #criteria()} that has a better and a worse
     * @return cases with a value, the best mean first; of equal ones the earlier point
     */
    public List<SweptCase> ranked(DesignCriterion criterion) {
        int number = criteria.indexOf(criterion);
        int sign = criterion.wish() == Wish.LESS ? 1 : -1;
        Map<List<String>, List<SweptCase>> alike = new LinkedHashMap<>();
        for (SweptCase one : cases) {
            List<String> chosen = new ArrayList<>(List.of(one.layout()));
            for (int f = 0; f < factors.size(); f++) {
                chosen.add(factors.get(f).isAssumed() ? ALL : one.values().get(f));
            }
            alike.computeIfAbsent(chosen, key -> new ArrayList<>()).add(one);
        }
        List<SweptCase> ranked = new ArrayList<>();
        alike.forEach((chosen, group) ->
                ranked.add(group.size() == 1 ? group.get(0) : SweptCase.mean(group, chosen.subList(1, chosen.size()))));
        ranked.removeIf(one -> one.of(number).isEmpty());
        ranked.sort(Comparator.comparingDouble(
                one -> sign * one.of(number).map(Interval::mean).orElseThrow()));
        return ranked;
    }

    /**
     * What each factor does to a criterion; several layouts are a factor too.
     *
     * @param criterion one of {@link #criteria()}
     * @return effects in the order of the factors
     */
    public List<MainEffect> effects(DesignCriterion criterion) {
        int number = criteria.indexOf(criterion);
        List<MainEffect> effects = new ArrayList<>();
        for (int f = 0; f < factors.size(); f++) {
            effects.add(MainEffect.of(factors.get(f), f, cases, number));
        }
        if (layouts.size() > 1) {
            effects.add(MainEffect.of(new SweptFactor(SweptFactor.LAYOUT, false, false, layouts), -1, cases, number));
        }
        return effects;
    }

    /**
     * A criterion in a case.
     *
     * @param one one of {@link #cases()}
     * @param criterion one of {@link #criteria()}
     * @return mean and interval; empty where there is no value
     */
    public Optional<Interval> value(SweptCase one, DesignCriterion criterion) {
        return one.of(criteria.indexOf(criterion));
    }
}
