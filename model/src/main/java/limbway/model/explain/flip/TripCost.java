package limbway.model.explain.flip;

import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.IncomingMoves;
import limbway.model.route.ReverseTree;

/**
 * What both ways of one trip cost.
 *
 * @param offGroundMilliJ cheapest way off the ground [mJ], or {@link ReverseTree#UNREACHABLE}
 * @param overGroundMilliJ cheapest way over the ground [mJ], or {@link ReverseTree#UNREACHABLE}
 */
public record TripCost(int offGroundMilliJ, int overGroundMilliJ) {

    /**
     * Costs a trip, wherever the animal is within the first place.
     *
     * @param graph the graph
     * @param costs what its moves cost the body
     * @param from number of the resource to start at
     * @param to number of the resource to arrive at
     * @return both costs, each from the hold where it is least
     */
    public static TripCost of(RouteGraph graph, MoveCosts costs, int from, int to) {
        IncomingMoves moves = new IncomingMoves(graph, costs);
        ReverseTree off = ReverseTree.offGround(moves, graph.useHolds(to));
        ReverseTree over = ReverseTree.overGround(moves, off);
        int leastOff = ReverseTree.UNREACHABLE;
        int leastOver = ReverseTree.UNREACHABLE;
        for (int hold : graph.useHolds(from)) {
            leastOff = Math.min(leastOff, off.milliJ(hold));
            leastOver = Math.min(leastOver, over.milliJ(hold));
        }
        return new TripCost(leastOff, leastOver);
    }

    /**
     * Whether the trip stays off the ground: no way is cheaper than the one off it.
     *
     * @return true if at least half of such trips stay off the ground
     */
    public boolean isOffGround() {
        return hasOffGround() && offGroundMilliJ <= overGroundMilliJ;
    }

    /**
     * Whether there is a way off the ground.
     *
     * @return true if there is one
     */
    public boolean hasOffGround() {
        return offGroundMilliJ != ReverseTree.UNREACHABLE;
    }

    /**
     * The cheaper of both.
     *
     * @return energy [mJ], or {@link ReverseTree#UNREACHABLE}
     */
    public int cheapestMilliJ() {
        return Math.min(offGroundMilliJ, overGroundMilliJ);
    }

    /**
     * How much dearer the way off the ground is than the way over it.
     *
     * @return energy [mJ], below 0 where it is cheaper; very large where there is no way off the ground
     */
    public long temptationMilliJ() {
        return (long) offGroundMilliJ - overGroundMilliJ;
    }

    /**
     * How many of such trips stay off the ground.
     *
     * @param sharpness how strictly the cheaper way is taken
     * @return probability, 0 to 1
     */
    public double share(ChoiceSharpness sharpness) {
        if (!hasOffGround()) {
            return 0;
        }
        return overGroundMilliJ == ReverseTree.UNREACHABLE || offGroundMilliJ == 0
                ? 1
                : sharpness.shareOfFirst(offGroundMilliJ, overGroundMilliJ);
    }
}
