package limbway.sim.experiment.link;

import java.util.Optional;

import limbway.model.link.Fall;
import limbway.model.link.Gain;
import limbway.sim.experiment.statistics.Interval;

/**
 * What is lost if a support fails.
 *
 * @param fall what comes down
 * @param expected what it does to the trips that are made as it stands; negative where less stays off the ground
 * @param lived what living without it did; empty if that was not tried
 */
public record Fragile(Fall fall, Gain expected, Optional<LivedDifference> lived) {

    /**
     * How much less of the travel is off the ground: as lived, else, and where nobody travels then, as expected.
     *
     * @return share; negative where more is
     */
    public double offGroundLoss() {
        double gain =
                lived.flatMap(LivedDifference::offGround).map(Interval::mean).orElse(expected.offGroundShare());
        // not the negative zero of a difference of nothing
        return 0 - gain;
    }
}
