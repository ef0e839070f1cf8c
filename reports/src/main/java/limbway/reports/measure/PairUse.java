package limbway.reports.measure;

import java.util.List;

import limbway.model.body.Body;
import limbway.model.explain.GroundReason;
import limbway.model.route.Search;
import limbway.sim.experiment.statistics.Interval;
import limbway.sim.journal.Motive;

/**
 * How the ground is used between two resources by all animals of one body.
 *
 * @param body who travels
 * @param from name of the resource where the trips start
 * @param to name of the resource where they end
 * @param motives why, most frequent first
 * @param tripsPerDay trips a day, over the ground or not
 * @param groundTripsPerDay trips a day that made a move on the ground
 * @param groundMPerDay metres on the ground a day
 * @param ways the ways that were open on the trips with most metres on the ground
 * @param reason why they lead over the ground
 */
public record PairUse(
        Body body,
        String from,
        String to,
        List<Motive> motives,
        double tripsPerDay,
        double groundTripsPerDay,
        Interval groundMPerDay,
        Search.Reached ways,
        GroundReason reason) {

    /** Keeps a copy of the list. */
    public PairUse {
        motives = List.copyOf(motives);
    }
}
