package limbway.reports.lesson;

import java.util.List;

import limbway.model.body.Body;
import limbway.model.explain.GroundReason;
import limbway.model.explain.flip.TripQuestion;
import limbway.model.route.Search;
import limbway.sim.journal.Motive;

/**
 * The trip that a lesson is about, in the layout that is taught.
 *
 * @param question who goes from where to where, and what stands there
 * @param ways both ways
 * @param reason why it leads over the ground, or that it does not
 * @param tripsPerDay such trips a day in the run, all animals of that body together; 0 if none was made
 * @param groundTripsPerDay those of them that made a move on the ground
 * @param motives why they were made, most frequent first; none if none was made
 */
public record TaughtTrip(
        TripQuestion question,
        Search.Reached ways,
        GroundReason reason,
        double tripsPerDay,
        double groundTripsPerDay,
        List<Motive> motives) {

    /** Keeps a copy of the list. */
    public TaughtTrip {
        motives = List.copyOf(motives);
    }

    /**
     * Who travels.
     *
     * @return a body of the group
     */
    public Body body() {
        return question.body();
    }

    /**
     * Where it starts.
     *
     * @return name of a place
     */
    public String from() {
        return question.from();
    }

    /**
     * Where it ends.
     *
     * @return name of another place
     */
    public String to() {
        return question.to();
    }

    /**
     * Whether the ground wins.
     *
     * @return true if the cheapest way makes a move on the ground
     */
    public boolean takesGround() {
        return costs().isOverGround();
    }

    /**
     * What both ways cost.
     *
     * @return their energies
     */
    public Costs costs() {
        return Costs.of(ways);
    }
}
