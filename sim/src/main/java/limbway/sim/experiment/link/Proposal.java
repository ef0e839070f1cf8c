package limbway.sim.experiment.link;

import java.util.List;
import java.util.Optional;

import limbway.model.link.Candidate;
import limbway.model.link.Gain;
import limbway.sim.experiment.statistics.Interval;

/**
 * One or more links to add together.
 *
 * @param links the links, in the order of the candidates
 * @param expected what they do to the trips that are made as it stands
 * @param lived what living with them did in the search; empty if that was not tried
 * @param fresh the same once more under chance that had no part in the search; only for those that led in it with a gain
 */
public record Proposal(
        List<Candidate> links, Gain expected, Optional<LivedDifference> lived, Optional<FreshCheck> fresh) {

    /** Keeps a copy of the list. */
    public Proposal {
        links = List.copyOf(links);
    }

    /**
     * How much more of the travel is off the ground: as lived in the search, else, and where nobody travels, as expected.
     *
     * @return share; negative where less is
     */
    public double offGroundGain() {
        return lived.flatMap(LivedDifference::offGround).map(Interval::mean).orElse(expected.offGroundShare());
    }

    /**
     * Whether its gain held up under fresh chance.
     *
     * @return false also where that was not tried
     */
    public boolean heldUp() {
        return fresh.isPresent() && fresh.get().heldUp();
    }
}
