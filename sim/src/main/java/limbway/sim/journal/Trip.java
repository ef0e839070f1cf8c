package limbway.sim.journal;

import limbway.model.route.Search;
import limbway.model.route.Way;

/**
 * One trip of one animal from a resource to the next.
 *
 * @param day day of the run, from 1
 * @param animal number of the animal in the study
 * @param startMs start, in milliseconds since midnight before day 1
 * @param fromResource number of the resource it starts at
 * @param toResource number of the resource it ends at
 * @param motive why it was made
 * @param ways the ways that were open; shared by all trips between the same holds
 * @param way the one that was taken
 */
public record Trip(
        int day,
        int animal,
        long startMs,
        int fromResource,
        int toResource,
        Motive motive,
        Search.Reached ways,
        Way way) {

    /**
     * When the trip ends.
     *
     * @return milliseconds since midnight before day 1
     */
    public long endMs() {
        return startMs + Math.round(way.seconds() * 1000);
    }

    /**
     * The hold at which it ends.
     *
     * @return number of a hold
     */
    public int toHold() {
        return way.holds().get(way.holds().size() - 1);
    }
}
