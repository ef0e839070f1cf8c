package limbway.sim.animal;

import limbway.sim.chance.Chance;
import limbway.sim.chance.Purpose;
import limbway.sim.chance.Stream;

/** The chance in one animal's decisions, keyed by the number of the decision and the name of the place. */
final class Draws {

    private static final int DECISIONS_PER_DAY_BITS = 20;
    private static final int NO_DAY = -1;

    private final Stream places;
    private final Stream ways;
    private final double[] night;
    private int nightDrawnFor = NO_DAY;
    private long decisions;

    Draws(Chance chance, String animal, int resources) {
        places = chance.stream(animal, Purpose.PLACE);
        ways = chance.stream(animal, Purpose.WAY);
        night = new double[resources];
    }

    /** Begins a decision; each day numbers its decisions anew, so that chance falls into step again. */
    long nextDecision(int day) {
        decisions = Math.max(decisions + 1, (long) day << DECISIONS_PER_DAY_BITS);
        return decisions;
    }

    long lastDecision() {
        return decisions;
    }

    /** A number spread evenly over 0 to 1, for the choice of way. */
    double ofWay(long decision) {
        return ways.uniform(decision);
    }

    /** What draws the animal to a place. */
    double to(long decision, long placeKey) {
        return places.gumbel(decision, placeKey);
    }

    /** No less than {@link #to}, and found faster. */
    double atMostTo(long decision, long placeKey) {
        return places.gumbelAtMost(decision, placeKey);
    }

    /** What draws it to a place for the night, the same all day. */
    double forNight(int day, int resource, Sites sites) {
        if (nightDrawnFor != day) {
            nightDrawnFor = day;
            long decision = ((day + 1L) << DECISIONS_PER_DAY_BITS) - 1;
            for (int r = 0; r < night.length; r++) {
                night[r] = places.gumbel(decision, sites.key(r));
            }
        }
        return night[resource];
    }
}
