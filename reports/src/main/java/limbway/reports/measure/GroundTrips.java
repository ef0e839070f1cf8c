package limbway.reports.measure;

import java.util.OptionalDouble;

import limbway.model.route.Way;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.trial.Criterion;
import limbway.sim.journal.Trip;

/** How many trips a day touch the ground, all animals together [1/d]. */
public final class GroundTrips implements Criterion {

    @Override
    public String name() {
        return "ground_trips_per_day";
    }

    @Override
    public boolean isShare() {
        return false;
    }

    @Override
    public OptionalDouble of(Outcome one) {
        long trips = one.journals().get(0).trips().stream()
                .map(Trip::way)
                .filter(Way::usesGround)
                .count();
        return OptionalDouble.of((double) trips / one.settings().days());
    }
}
