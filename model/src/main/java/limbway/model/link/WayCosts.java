package limbway.model.link;

import limbway.model.route.ReverseTree;

/**
 * What the two kinds of ways of an errand cost.
 *
 * @param offMilliJ cheapest way without a move on the ground [mJ], or {@link ReverseTree#UNREACHABLE}
 * @param overMilliJ cheapest way with one [mJ], or {@link ReverseTree#UNREACHABLE}
 */
public record WayCosts(int offMilliJ, int overMilliJ) {

    /**
     * Whether there is a way off the ground.
     *
     * @return true if the first cost is one
     */
    public boolean leadsOffGround() {
        return offMilliJ != ReverseTree.UNREACHABLE;
    }
}
