package limbway.model.explain.flip;

import java.util.Optional;

import limbway.model.explain.PairWays;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.ReverseTree;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.model.route.Way;

/**
 * What both ways of one trip cost.
 *
 * @param offGroundMilliJ cheapest way off the ground [mJ], or {@link ReverseTree#UNREACHABLE}
 * @param overGroundMilliJ cheapest way over the ground [mJ], or {@link ReverseTree#UNREACHABLE}
 */
public record TripCost(int offGroundMilliJ, int overGroundMilliJ) {

    /**
     * Costs a trip, wherever the animal is within the first place. As when it is travelled, a way over the ground that comes
     * back to where it was counts for nothing beside one off the ground.
     *
     * @param graph the graph
     * @param costs what its moves cost the body
     * @param sharpness how strictly the cheaper way is taken
     * @param from number of the resource to start at
     * @param to number of the resource to arrive at
     * @return both costs, each from the hold where it is least
     */
    public static TripCost of(RouteGraph graph, MoveCosts costs, ChoiceSharpness sharpness, int from, int to) {
        Routes routes = Routes.towards(graph, costs, sharpness, to);
        return PairWays.find(routes, sharpness, from, to) instanceof Search.Reached ways
                ? new TripCost(milliJ(ways.offGround()), milliJ(ways.overGround()))
                : new TripCost(ReverseTree.UNREACHABLE, ReverseTree.UNREACHABLE);
    }

    private static int milliJ(Optional<Way> way) {
        return way.map(one -> Math.toIntExact(one.milliJ())).orElse(ReverseTree.UNREACHABLE);
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
