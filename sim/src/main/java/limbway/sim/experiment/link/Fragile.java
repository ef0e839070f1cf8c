package limbway.sim.experiment.link;

import java.util.Optional;

import limbway.model.link.Fall;
import limbway.model.link.Gain;

/**
 * What is lost if a support fails.
 *
 * @param fall what comes down
 * @param expected what it does to the trips that are made as it stands; negative where less stays off the ground
 * @param lived what living without it did; empty if that was not tried
 */
public record Fragile(Fall fall, Gain expected, Optional<Difference> lived) {

    /**
     * How much less of the travel is off the ground: as lived, else as expected.
     *
     * @return share; negative where more is
     */
    public double offGroundLoss() {
        return -lived.map(difference -> difference.offGround().mean()).orElse(expected.offGroundShare());
    }
}
