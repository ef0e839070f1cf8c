package limbway.model.explain.flip;

import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.IncomingMoves;
import limbway.model.route.ReverseTree;

/** What every hold of a layout costs from the start of a trip and to its end. */
final class TripTrees {

    private final RouteGraph graph;
    private final MoveCosts costs;
    private final TripCost now;
    private final ForwardTree forward;
    private final ReverseTree off;
    private final ReverseTree over;

    TripTrees(TripQuestion question, RouteGraph graph) {
        this.graph = graph;
        this.costs = question.costs(graph, question.energy());
        int from = graph.resourceNumber(question.from());
        int to = graph.resourceNumber(question.to());
        this.now = TripCost.of(graph, costs, question.sharpness(), from, to);
        IncomingMoves moves = new IncomingMoves(graph, costs);
        this.off = ReverseTree.offGround(moves, graph.useHolds(to));
        this.over = ReverseTree.overGround(moves, off);
        this.forward = new ForwardTree(graph, costs, graph.useHolds(from), Integer.MAX_VALUE - 1);
    }

    RouteGraph graph() {
        return graph;
    }

    MoveCosts costs() {
        return costs;
    }

    /** What the trip costs now. */
    TripCost now() {
        return now;
    }

    ForwardTree fromStart() {
        return forward;
    }

    /** Cost from a hold to the end of the trip without a move on the ground. */
    int offGroundToEndMilliJ(int hold) {
        return off.milliJ(hold);
    }

    /** Whether the way off the ground would be the cheapest if the trip ended at a hold. */
    boolean turnsIfEndingAt(int hold) {
        return turns(forward.offGroundMilliJ(hold), forward.overGroundMilliJ(hold));
    }

    /** Whether the way off the ground would be the cheapest if the trip began at a hold. */
    boolean turnsIfStartingAt(int hold) {
        return turns(off.milliJ(hold), over.milliJ(hold));
    }

    private static boolean turns(int offMilliJ, int overMilliJ) {
        return offMilliJ != ReverseTree.UNREACHABLE && offMilliJ > 0 && offMilliJ <= overMilliJ;
    }
}
