package limbway.reports.measure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

import limbway.model.study.Animal;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.statistics.Interval;
import limbway.sim.journal.Displacement;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Stay;

/**
 * How animals get in each other's way: time spent waiting for a stall, and stalls taken from one by another.
 *
 * @param minutesPerDay waiting of the mean animal [min/day]
 * @param displacementsPerDay how often somebody took another's stall, whole group [1/day]
 * @param byAnimal each animal, in the order of the study
 * @param byPlace displacements at each place where there was one, in the order of the resources [1/day]
 */
public record Waiting(
        Interval minutesPerDay, Interval displacementsPerDay, List<OfAnimal> byAnimal, Map<String, Interval> byPlace) {

    private static final double MS_PER_MIN = 60_000;

    /**
     * One animal.
     *
     * @param animal its name
     * @param minutesPerDay time waited [min/day]
     * @param wonPerDay stalls it took from others [1/day]
     * @param lostPerDay stalls that others took from it [1/day]
     */
    public record OfAnimal(String animal, Interval minutesPerDay, Interval wonPerDay, Interval lostPerDay) {}

    /** Keeps copies. */
    public Waiting {
        byAnimal = List.copyOf(byAnimal);
        byPlace = Collections.unmodifiableMap(new LinkedHashMap<>(byPlace));
    }

    /**
     * Computes the measure.
     *
     * @param outcome a run with at least one finished replication
     * @return waiting and displacements
     */
    public static Waiting of(Outcome outcome) {
        List<Animal> animals = outcome.habitat().animals();
        List<OfAnimal> byAnimal = new ArrayList<>();
        for (int i = 0; i < animals.size(); i++) {
            int number = i;
            byAnimal.add(new OfAnimal(
                    animals.get(i).name(),
                    perDay(outcome, journal -> waitedMin(journal, stay -> stay.animal() == number)),
                    perDay(outcome, journal -> count(journal, d -> d.winner() == number)),
                    perDay(outcome, journal -> count(journal, d -> d.loser() == number))));
        }
        Map<String, Interval> byPlace = new LinkedHashMap<>();
        for (int r = 0; r < outcome.habitat().graph().resources().size(); r++) {
            int place = r;
            Interval at = perDay(outcome, journal -> count(journal, d -> d.resource() == place));
            if (at.mean() > 0) {
                byPlace.put(outcome.habitat().graph().resources().get(r).id(), at);
            }
        }
        return new Waiting(
                perDay(outcome, journal -> waitedMin(journal, stay -> true) / animals.size()),
                perDay(outcome, journal -> journal.displacements().size()),
                byAnimal,
                byPlace);
    }

    private static Interval perDay(Outcome outcome, ToDoubleFunction<Journal> inRun) {
        List<Double> values = new ArrayList<>();
        for (Journal journal : outcome.journals()) {
            values.add(inRun.applyAsDouble(journal) / outcome.settings().days());
        }
        return Interval.of(values).orElseThrow();
    }

    private static double waitedMin(Journal journal, Predicate<Stay> whose) {
        long ms = journal.stays().stream()
                .filter(stay -> stay.waiting() && whose.test(stay))
                .mapToLong(stay -> stay.endMs() - stay.startMs())
                .sum();
        return ms / MS_PER_MIN;
    }

    private static double count(Journal journal, Predicate<Displacement> which) {
        return journal.displacements().stream().filter(which).count();
    }
}
