package limbway.model.route;

import java.util.Optional;
import java.util.stream.IntStream;

import limbway.model.body.Body;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;

/**
 * All ways of one body to the resources of an enclosure.
 *
 * <p>Immutable once built, so threads may share it.
 */
public final class Routes {

    private final RouteGraph graph;
    private final MoveCosts costs;
    private final ChoiceSharpness sharpness;
    private final ReverseTree[] offGround;
    private final ReverseTree[] overGround;

    /**
     * Builds both trees to every resource.
     *
     * @param graph the graph
     * @param costs the body's costs on that graph
     * @param sharpness how strictly the cheaper way is taken
     */
    public Routes(RouteGraph graph, MoveCosts costs, ChoiceSharpness sharpness) {
        this(graph, costs, sharpness, IntStream.range(0, graph.resources().size()));
    }

    private Routes(RouteGraph graph, MoveCosts costs, ChoiceSharpness sharpness, IntStream resources) {
        this.graph = graph;
        this.costs = costs;
        this.sharpness = sharpness;
        this.offGround = new ReverseTree[graph.resources().size()];
        this.overGround = new ReverseTree[graph.resources().size()];
        IncomingMoves moves = new IncomingMoves(graph, costs);
        resources.forEach(r -> {
            offGround[r] = ReverseTree.offGround(moves, graph.useHolds(r));
            overGround[r] = ReverseTree.overGround(moves, offGround[r]);
        });
    }

    /**
     * Builds both trees to one resource only; nothing must be asked about others.
     *
     * @param graph the graph
     * @param costs the body's costs on that graph
     * @param sharpness how strictly the cheaper way is taken
     * @param resource number of the resource
     * @return ways to it
     */
    public static Routes towards(RouteGraph graph, MoveCosts costs, ChoiceSharpness sharpness, int resource) {
        return new Routes(graph, costs, sharpness, IntStream.of(resource));
    }

    /**
     * The graph.
     *
     * @return the graph the routes run on
     */
    public RouteGraph graph() {
        return graph;
    }

    /**
     * How strictly the cheaper way is taken.
     *
     * @return the sharpness of the choice
     */
    public ChoiceSharpness sharpness() {
        return sharpness;
    }

    /**
     * What each move costs.
     *
     * @return costs of the body
     */
    public MoveCosts costs() {
        return costs;
    }

    /**
     * Who moves.
     *
     * @return the body
     */
    public Body body() {
        return costs.body();
    }

    /**
     * Cost of the cheapest way without a move on the ground.
     *
     * @param hold where it starts
     * @param resource number of the resource
     * @return energy [mJ], or {@link ReverseTree#UNREACHABLE}
     */
    public int offGroundMilliJ(int hold, int resource) {
        return offGround[resource].milliJ(hold);
    }

    /**
     * Cost of the cheapest way with a move on the ground.
     *
     * @param hold where it starts
     * @param resource number of the resource
     * @return energy [mJ], or {@link ReverseTree#UNREACHABLE}
     */
    public int overGroundMilliJ(int hold, int resource) {
        return overGround[resource].milliJ(hold);
    }

    /**
     * Cost of the cheapest way.
     *
     * @param hold where it starts
     * @param resource number of the resource
     * @return energy [mJ], or {@link ReverseTree#UNREACHABLE}
     */
    public int cheapestMilliJ(int hold, int resource) {
        return Math.min(offGround[resource].milliJ(hold), overGround[resource].milliJ(hold));
    }

    /**
     * Finds the ways from a hold to a resource.
     *
     * @param hold where the animal is
     * @param resource number of the resource
     * @return the ways, or why there is none
     */
    public Search find(int hold, int resource) {
        Optional<Way> off = wayOffGround(hold, resource);
        Optional<Way> over = wayOverGround(hold, resource);
        if (off.isEmpty() && over.isEmpty()) {
            String target = graph.resources().get(resource).id();
            return new Search.Unreachable(
                    graph.useHolds(resource).length == 0
                            ? "nothing that an animal can hold is within reach of " + target
                            : "no support, platform or ground leads this " + body().name() + " from "
                                    + graph.support(hold) + " to " + target);
        }
        Optional<Way> rival = over.filter(way -> !way.hasLoop());
        if (off.isEmpty()) {
            return new Search.Reached(over.get(), off, over, 0);
        }
        boolean offIsCheapest =
                over.isEmpty() || off.get().milliJ() <= over.get().milliJ();
        double share = rival.isEmpty() || off.get().milliJ() == 0
                ? 1
                : sharpness.shareOfFirst(off.get().milliJ(), rival.get().milliJ());
        return new Search.Reached(offIsCheapest ? off.get() : over.get(), off, rival, share);
    }

    private Optional<Way> wayOffGround(int hold, int resource) {
        ReverseTree tree = offGround[resource];
        if (tree.milliJ(hold) == ReverseTree.UNREACHABLE) {
            return Optional.empty();
        }
        WayBuilder way = new WayBuilder(graph, costs, hold);
        way.follow(tree);
        return Optional.of(way.build());
    }

    private Optional<Way> wayOverGround(int hold, int resource) {
        ReverseTree over = overGround[resource];
        ReverseTree off = offGround[resource];
        if (over.milliJ(hold) == ReverseTree.UNREACHABLE) {
            return Optional.empty();
        }
        WayBuilder way = new WayBuilder(graph, costs, hold);
        int left = over.milliJ(hold);
        boolean lastGroundMoveMade = false;
        while (!lastGroundMoveMade) {
            int move = over.nextMove(way.at());
            left -= costs.milliJ(move);
            way.make(move);
            lastGroundMoveMade = graph.moveOnGround(move) && off.milliJ(way.at()) == left;
        }
        way.follow(off);
        return Optional.of(way.build());
    }
}
