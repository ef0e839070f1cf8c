package limbway.reports.measure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;

import limbway.model.body.Body;
import limbway.model.study.Animal;
import limbway.model.study.Viewpoint;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.statistics.Interval;

/**
 * How much of the time in which visitors are there the animals can be seen, asleep or awake. The unit of repetition is a
 * replication; half of the time of a trip counts at either end of it.
 *
 * @param overall all animals together
 * @param byBody by name of the body, in the order of the animals
 * @param byAnimal by name of the animal, in the order of the study
 */
public record Visibility(Seen overall, Map<String, Seen> byBody, Map<String, Seen> byAnimal) {

    /** Keeps copies in the same order. */
    public Visibility {
        byBody = Collections.unmodifiableMap(new LinkedHashMap<>(byBody));
        byAnimal = Collections.unmodifiableMap(new LinkedHashMap<>(byAnimal));
    }

    /**
     * How much some animals are seen.
     *
     * @param fromViewpoint by name of the viewpoint, share of the animals' time in which visitors are there that they can be
     *     seen from it, 0 to 1; one at which nobody ever is gives none
     * @param fromAny share of the time in which visitors are anywhere that they can be seen from where some of them are
     * @param atRetreat share of that same time that they stay at retreats
     */
    public record Seen(Map<String, Interval> fromViewpoint, Optional<Interval> fromAny, Optional<Interval> atRetreat) {

        /** Keeps a copy in the same order. */
        public Seen {
            fromViewpoint = Collections.unmodifiableMap(new LinkedHashMap<>(fromViewpoint));
        }

        /**
         * What is left of being seen.
         *
         * @return share of the time in which visitors are anywhere that none of them can see the animals, 0 to 1
         */
        public Optional<Interval> outOfSight() {
            return fromAny.map(seen -> new Interval(1 - seen.mean(), seen.halfWidth(), seen.n()));
        }
    }

    /**
     * Computes all shares.
     *
     * @param outcome a run with at least one finished replication
     * @return the shares, or empty where the layout has no viewpoints
     */
    public static Optional<Visibility> of(Outcome outcome) {
        List<Viewpoint> viewpoints = outcome.habitat().layout().keeping().viewpoints();
        if (viewpoints.isEmpty()) {
            return Optional.empty();
        }
        List<SeenTime> runs = outcome.journals().stream()
                .map(journal -> SeenTime.of(outcome.habitat(), journal))
                .toList();
        List<Animal> animals = outcome.habitat().animals();
        Map<String, Seen> byBody = new LinkedHashMap<>();
        for (Body body : outcome.habitat().bodies()) {
            byBody.put(body.name(), seen(viewpoints, runs, animal -> animals.get(animal)
                    .body()
                    .name()
                    .equals(body.name())));
        }
        Map<String, Seen> byAnimal = new LinkedHashMap<>();
        for (int a = 0; a < animals.size(); a++) {
            int number = a;
            byAnimal.put(animals.get(a).name(), seen(viewpoints, runs, animal -> animal == number));
        }
        return Optional.of(new Visibility(seen(viewpoints, runs, animal -> true), byBody, byAnimal));
    }

    private static Seen seen(List<Viewpoint> viewpoints, List<SeenTime> runs, IntPredicate counted) {
        Map<String, Interval> fromViewpoint = new LinkedHashMap<>();
        for (int v = 0; v < viewpoints.size(); v++) {
            int number = v;
            String name = viewpoints.get(v).id();
            share(runs, run -> run.seenFrom(number, counted)).ifPresent(interval -> fromViewpoint.put(name, interval));
        }
        return new Seen(
                fromViewpoint,
                share(runs, run -> run.seenFromAny(counted)),
                share(runs, run -> run.atRetreat(counted)));
    }

    /** A share of one replication. */
    private interface Share {
        Optional<Double> of(SeenTime run);
    }

    private static Optional<Interval> share(List<SeenTime> runs, Share share) {
        List<Double> shares = new ArrayList<>();
        runs.forEach(run -> share.of(run).ifPresent(shares::add));
        return Interval.of(shares);
    }
}
