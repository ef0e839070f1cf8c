package limbway.model.graph;

import org.jgrapht.Graph;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.DirectedWeightedMultigraph;

/**
 * The moves of one body as a JGraphT graph, for its algorithms on structure and as the independent reference for our
 * routes.
 *
 * <p>Takes about 250 bytes a move, so it is for answers asked once, not for the simulation.
 */
public final class JGraphView {

    private JGraphView() {}

    /**
     * All moves that the body can make.
     *
     * @param graph the graph
     * @param costs the body's costs
     * @return a directed multigraph of hold numbers, weighted in millijoules, which doubles hold exactly
     */
    public static Graph<Integer, DefaultWeightedEdge> of(RouteGraph graph, MoveCosts costs) {
        return view(graph, costs, true);
    }

    /**
     * The moves that the body can make without walking on the ground.
     *
     * @param graph the graph
     * @param costs the body's costs
     * @return a directed multigraph of hold numbers, weighted in millijoules
     */
    public static Graph<Integer, DefaultWeightedEdge> offGround(RouteGraph graph, MoveCosts costs) {
        return view(graph, costs, false);
    }

    private static Graph<Integer, DefaultWeightedEdge> view(RouteGraph graph, MoveCosts costs, boolean withGround) {
        Graph<Integer, DefaultWeightedEdge> view = new DirectedWeightedMultigraph<>(DefaultWeightedEdge.class);
        for (int hold = 0; hold < graph.holdCount(); hold++) {
            view.addVertex(hold);
        }
        for (int move = 0; move < graph.moveCount(); move++) {
            if (costs.milliJ(move) != MoveCosts.IMPOSSIBLE && (withGround || !graph.moveOnGround(move))) {
                view.setEdgeWeight(view.addEdge(graph.from(move), graph.to(move)), costs.milliJ(move));
            }
        }
        return view;
    }
}
