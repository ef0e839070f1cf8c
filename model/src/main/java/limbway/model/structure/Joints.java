package limbway.model.structure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.jgrapht.Graph;
import org.jgrapht.Graphs;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.AsSubgraph;

/**
 * Where a graph can be parted: by the loss of one vertex, or of one edge.
 *
 * @param cutPoints vertices whose loss leaves more pieces than before, ascending
 * @param bridges edges whose loss does, each as its two ends, the smaller first, ascending
 * @param deadEnds vertices joined to exactly one other, ascending
 * @param blocks pieces that hang together without bridges: between any two vertices of one lead two ways that share no
 *     edge; each ascending, in the order of their least vertex
 */
public record Joints(
        List<Integer> cutPoints, List<Bridge> bridges, List<Integer> deadEnds, List<List<Integer>> blocks) {

    /**
     * An edge whose loss parts the graph.
     *
     * @param one its smaller end
     * @param other its greater end
     */
    public record Bridge(int one, int other) {}

    /** Keeps copies of the lists. */
    public Joints {
        cutPoints = List.copyOf(cutPoints);
        bridges = List.copyOf(bridges);
        deadEnds = List.copyOf(deadEnds);
        blocks = List.copyOf(blocks);
    }

    /**
     * Finds the joints of a graph.
     *
     * @param graph an undirected graph without loops or double edges
     * @param <E> its edges
     * @return its joints
     */
    public static <E> Joints of(Graph<Integer, E> graph) {
        List<Integer> vertices = List.copyOf(new TreeSet<>(graph.vertexSet()));
        Map<Integer, Integer> place = new LinkedHashMap<>();
        vertices.forEach(vertex -> place.put(vertex, place.size()));
        List<List<Integer>> neighbours = new ArrayList<>();
        List<Integer> deadEnds = new ArrayList<>();
        for (int vertex : vertices) {
            neighbours.add(Graphs.neighborListOf(graph, vertex).stream()
                    .map(place::get)
                    .sorted()
                    .toList());
            if (graph.degreeOf(vertex) == 1) {
                deadEnds.add(vertex);
            }
        }
        LowPoints search = new LowPoints(neighbours);
        List<Integer> cutPoints = vertices.stream()
                .filter(vertex -> search.isCut(place.get(vertex)))
                .toList();
        List<Bridge> bridges = search.bridges().stream()
                .map(bridge -> new Bridge(vertices.get(bridge.one()), vertices.get(bridge.other())))
                .sorted(Comparator.comparingInt(Bridge::one).thenComparingInt(Bridge::other))
                .toList();
        AsSubgraph<Integer, E> held = new AsSubgraph<>(graph);
        bridges.forEach(bridge -> held.removeEdge(bridge.one(), bridge.other()));
        return new Joints(cutPoints, bridges, deadEnds, pieces(held));
    }

    /** Pieces that hang together, each ascending, in the order of their least vertex. */
    static <E> List<List<Integer>> pieces(Graph<Integer, E> graph) {
        List<List<Integer>> pieces = new ArrayList<>();
        for (Set<Integer> piece : new ConnectivityInspector<>(graph).connectedSets()) {
            pieces.add(List.copyOf(new TreeSet<>(piece)));
        }
        pieces.sort(Comparator.comparingInt(piece -> piece.get(0)));
        return pieces;
    }
}
