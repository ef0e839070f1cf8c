package limbway.reports.measure;

import java.util.OptionalDouble;
import java.util.function.Function;

import limbway.model.route.Way;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.trial.Criterion;
import limbway.sim.journal.Trip;

/**
 * What links are judged by.
 *
 * @param name what it is called
 * @param isShare whether it is a share
 * @param value its value in an outcome with one journal
 */
public record LinkCriterion(String name, boolean isShare, Function<Outcome, OptionalDouble> value)
        implements Criterion {

    /**
     * Share of the distance travelled that is off the ground.
     *
     * @return the criterion that decides
     */
    public static Criterion offGround() {
        return new LinkCriterion(
                "off_ground", true, one -> OffGroundShare.of(one.journals().get(0), trip -> true, Aspect.DISTANCE));
    }

    /**
     * Trips that touch the ground.
     *
     * @return trips a day, all animals together
     */
    public static Criterion groundTrips() {
        return new LinkCriterion("ground_trips_per_day", false, LinkCriterion::groundTrips);
    }

    private static OptionalDouble groundTrips(Outcome one) {
        long trips = one.journals().get(0).trips().stream()
                .map(Trip::way)
                .filter(Way::usesGround)
                .count();
        return OptionalDouble.of((double) trips / one.settings().days());
    }

    @Override
    public OptionalDouble of(Outcome one) {
        return value.apply(one);
    }
}
