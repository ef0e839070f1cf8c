package limbway.sim.experiment.link;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.sim.experiment.statistics.Holm;
import limbway.sim.experiment.statistics.Interval;

/**
 * What living with a proposal did under chance that had no part in the search.
 *
 * @param difference what it did; the interval of its share is widened for all that were checked
 * @param pHolm chance of so much if it did nothing, by Holm's method for all that were checked, 0 to 1; 1 where nobody travels
 * @param checked how many proposals were checked, 1 or more
 */
public record FreshCheck(LivedDifference difference, double pHolm, int checked) {

    /** Below this a gain is declared. The usual level, a convention. */
    private static final double LEVEL = 0.05;

    /**
     * Whether the gain held up.
     *
     * @return true if more of the travel is off the ground and chance alone is an unlikely reason for it
     */
    public boolean heldUp() {
        return pHolm < LEVEL
                && difference.offGround().map(gain -> gain.mean() > 0).orElse(false);
    }

    /** Judges several together; in the order of the differences. */
    static List<FreshCheck> of(List<LivedDifference> differences) {
        double[] p = differences.stream()
                .mapToDouble(one -> one.offGround().map(Interval::p).orElse(1.0))
                .toArray();
        double[] holm = Holm.adjusted(p);
        List<FreshCheck> checks = new ArrayList<>();
        for (int i = 0; i < holm.length; i++) {
            double questions = p[i] > 0 ? holm[i] / p[i] : holm.length;
            LivedDifference one = differences.get(i);
            Optional<Interval> wider = one.offGround().map(gain -> gain.corrected(questions));
            checks.add(new FreshCheck(
                    new LivedDifference(wider, one.fewerGroundTrips(), one.firstReplication()), holm[i], holm.length));
        }
        return checks;
    }
}
