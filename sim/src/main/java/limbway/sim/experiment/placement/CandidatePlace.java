package limbway.sim.experiment.placement;

import limbway.model.enclosure.Resource;
import limbway.model.geometry.Point;
import limbway.model.study.Variant;

/**
 * A place where something could be put.
 *
 * @param words where it is, as a scenario says it: {@code mast-3 at 5.5}, or {@code [4, 2.5, 0]}
 * @param at the same in space
 * @param on id of the support or platform that carries it, or empty if it is given by coordinates
 */
public record CandidatePlace(String words, Point at, String on) {

    /** Places closer than this are the same [m]. */
    private static final double SAME_M = 1e-6;

    /**
     * Where a place is now.
     *
     * @param resource the place
     * @return the candidate at which it stays
     */
    public static CandidatePlace asItIs(Resource resource) {
        return new CandidatePlace(resource.id() + " as it is", resource.at(), resource.on());
    }

    /** Whether a place of a layout is here already. */
    boolean isWhere(Variant base, String id) {
        return base.enclosure().resources().stream()
                .anyMatch(resource -> resource.id().equals(id)
                        && resource.on().equals(on)
                        && resource.at().distanceM(at) < SAME_M);
    }

    /**
     * Whether another candidate is at the same place.
     *
     * @param other the other
     * @return true if nothing can be put at both
     */
    public boolean coincides(CandidatePlace other) {
        return at.distanceM(other.at) < SAME_M;
    }

    /**
     * The key and value of a scenario that put something here.
     *
     * @return for example {@code on: mast-3 at 5.5}, in quotation marks where YAML needs them
     */
    public String entry() {
        if (on.isEmpty()) {
            return "at: " + words;
        }
        return words.indexOf('[') >= 0 ? "on: \"" + words + "\"" : "on: " + words;
    }

    /**
     * Where it is, for people.
     *
     * @return the words; a height or distance along a support with its unit
     */
    public String told() {
        return on.isEmpty() || words.endsWith("]") || words.equals(on) || !words.contains(" at ") || words.endsWith("%")
                ? words
                : words + " m";
    }
}
