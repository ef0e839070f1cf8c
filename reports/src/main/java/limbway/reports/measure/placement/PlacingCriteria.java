package limbway.reports.measure.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

import limbway.model.study.Animal;
import limbway.reports.measure.AnimalEnergy;
import limbway.reports.measure.Aspect;
import limbway.reports.measure.OffGroundShare;
import limbway.reports.measure.Waiting;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.statistics.Interval;
import limbway.sim.experiment.trial.Criterion;

/** What layouts are judged by when places are put: travel off the ground first, then waiting, then what each animal spends. */
public final class PlacingCriteria {

    /** Place of the share of travel off the ground among the criteria. */
    public static final int OFF_GROUND = 0;

    /** Place of the minutes waited among the criteria. */
    public static final int WAITING = 1;

    /** Place of the energy of the first animal; the others follow in the order of the study. */
    public static final int FIRST_ENERGY = 2;

    private PlacingCriteria() {}

    private record Measured(String name, boolean isShare, Function<Outcome, Optional<Interval>> measure)
            implements Criterion {
        @Override
        public OptionalDouble of(Outcome one) {
            return measure.apply(one)
                    .map(interval -> OptionalDouble.of(interval.mean()))
                    .orElse(OptionalDouble.empty());
        }
    }

    /**
     * The criteria for a group.
     *
     * @param animals the group
     * @return off-ground share by distance, waiting of the mean animal [min/day], energy of moves of each animal [kJ/day]
     */
    public static List<Criterion> of(List<Animal> animals) {
        List<Criterion> all = new ArrayList<>();
        all.add(new Measured("offground_distance", true, one -> OffGroundShare.of(one.journals(), trip -> true)
                .by(Aspect.DISTANCE)));
        all.add(new Measured(
                "waiting_min_per_day", false, one -> Optional.of(Waiting.of(one).minutesPerDay())));
        for (int a = 0; a < animals.size(); a++) {
            int animal = a;
            all.add(new Measured(
                    "moved_kj_per_day " + animals.get(a).name(),
                    false,
                    one -> Optional.of(kilo(AnimalEnergy.of(one).get(animal).movedTotalJPerDay()))));
        }
        return List.copyOf(all);
    }

    private static Interval kilo(Interval joules) {
        return new Interval(joules.mean() / 1000, OptionalDouble.empty(), joules.n());
    }
}
