package limbway.model.scene;

import java.util.Arrays;

import org.jgrapht.Graph;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.EdgeReversedGraph;

import limbway.model.graph.JGraphView;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ReverseTree;

/** Least costs by Dijkstra's method in JGraphT, an independent solver. */
public final class DijkstraReference {

    private final Graph<Integer, DefaultWeightedEdge> all;
    private final Graph<Integer, DefaultWeightedEdge> offGround;

    public DijkstraReference(RouteGraph graph, MoveCosts costs) {
        all = JGraphView.of(graph, costs);
        offGround = JGraphView.offGround(graph, costs);
    }

    /** Least cost from every hold to the nearest of the targets, over all moves. */
    public int[] cheapest(int[] targets) {
        return least(all, targets);
    }

    /** Least cost from every hold to the nearest of the targets, without moves on the ground. */
    public int[] offGround(int[] targets) {
        return least(offGround, targets);
    }

    private static int[] least(Graph<Integer, DefaultWeightedEdge> graph, int[] targets) {
        var search = new DijkstraShortestPath<>(new EdgeReversedGraph<>(graph));
        int[] least = new int[graph.vertexSet().size()];
        Arrays.fill(least, ReverseTree.UNREACHABLE);
        for (int target : targets) {
            var paths = search.getPaths(target);
            for (int hold = 0; hold < least.length; hold++) {
                double weight = paths.getWeight(hold);
                if (weight < least[hold]) {
                    least[hold] = (int) weight;
                }
            }
        }
        return least;
    }
}
