package limbway.model.structure;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.jgrapht.Graph;
import org.jgrapht.alg.flow.DinicMFImpl;
import org.jgrapht.alg.interfaces.MaximumFlowAlgorithm;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;

/**
 * How many ways off the ground share nothing, by the greatest flow that the graph of the parts carries.
 *
 * @source Menger 1927: as many ways share no edge (no vertex) as edges (vertices) must be lost to part the ends; Dinic
 *     1970 for the flow, as JGraphT implements it (both from memory)
 */
public final class DisjointWays {

    private static final int SOURCE = -1;
    private static final int SINK = -2;

    private final PartGraph parts;

    /**
     * Counts in a graph.
     *
     * @param parts the graph of a body
     */
    public DisjointWays(PartGraph parts) {
        this.parts = parts;
    }

    /**
     * Ways between two resources that share no join between two parts; they may share a part.
     *
     * <p>Where ropes are fixed close together an animal can step between any two of them, so that two such ways may lead
     * along the same rope: {@link #apart} tells whether one animal can bar them.
     *
     * @param resource place of a resource in the graph's list
     * @param other place of another
     * @return 0 if no way leads off the ground, {@link Integer#MAX_VALUE} if both are used from one part
     */
    public int between(int resource, int other) {
        return ways(parts.partsOf(resource), parts.partsOf(other), parts.parts().size());
    }

    /**
     * Ways between two resources that share no part, the parts of the two themselves aside.
     *
     * @param resource place of a resource in the graph's list
     * @param other place of another
     * @return 0 if no way leads off the ground, {@link Integer#MAX_VALUE} if both are used from one part
     */
    public int apart(int resource, int other) {
        return ways(parts.partsOf(resource), parts.partsOf(other), 1);
    }

    /**
     * Ways to a resource from all others together that share no part, its own and theirs aside.
     *
     * <p>Others that are used from one of its own parts do not count: no way is needed there.
     *
     * @param resource place of a resource in the graph's list
     * @return 0 if no way leads off the ground from another
     */
    public int toOthers(int resource) {
        List<Integer> own = parts.partsOf(resource);
        Set<Integer> others = new TreeSet<>();
        for (int other = 0; other < parts.resourceCount(); other++) {
            List<Integer> its = parts.partsOf(other);
            if (its.stream().noneMatch(own::contains)) {
                others.addAll(its);
            }
        }
        return ways(own, others, 1);
    }

    /**
     * Ways out of a part that share no other part: to the ground, to another deck or to a resource elsewhere.
     *
     * <p>With one, a single animal shuts in whoever is there.
     *
     * @param part number of a part
     * @param goals parts that are worth going to
     * @return 0 or more; a part that is itself a goal is not counted as one
     */
    public int exits(int part, Collection<Integer> goals) {
        var network = network(1);
        Set<Integer> others = new LinkedHashSet<>(goals);
        others.remove(part);
        others.forEach(goal -> carry(network, out(goal), SINK, 1));
        return flow(network, out(part), SINK);
    }

    private int ways(Collection<Integer> from, Collection<Integer> to, int throughEachPart) {
        if (from.stream().anyMatch(to::contains)) {
            return Integer.MAX_VALUE;
        }
        var network = network(throughEachPart);
        int all = parts.graph().edgeSet().size();
        from.forEach(part -> carry(network, SOURCE, out(part), all));
        to.forEach(part -> carry(network, part, SINK, all));
        return flow(network, SOURCE, SINK);
    }

    /** Whatever comes into a part goes from the vertex of its number to the vertex out of it, and on along a join. */
    private Graph<Integer, DefaultWeightedEdge> network(int throughEachPart) {
        var network = new SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge>(DefaultWeightedEdge.class);
        network.addVertex(SOURCE);
        network.addVertex(SINK);
        for (int part = 0; part < parts.parts().size(); part++) {
            network.addVertex(part);
            network.addVertex(out(part));
            carry(network, part, out(part), throughEachPart);
        }
        Graph<Integer, DefaultEdge> graph = parts.graph();
        for (DefaultEdge edge : graph.edgeSet()) {
            int a = graph.getEdgeSource(edge);
            int b = graph.getEdgeTarget(edge);
            carry(network, out(a), b, 1);
            carry(network, out(b), a, 1);
        }
        return network;
    }

    private int out(int part) {
        return parts.parts().size() + part;
    }

    private static void carry(Graph<Integer, DefaultWeightedEdge> network, int from, int to, int capacity) {
        network.setEdgeWeight(network.addEdge(from, to), capacity);
    }

    private static int flow(Graph<Integer, DefaultWeightedEdge> network, int from, int to) {
        MaximumFlowAlgorithm<Integer, DefaultWeightedEdge> dinic = new DinicMFImpl<>(network);
        return (int) Math.round(dinic.getMaximumFlowValue(from, to));
    }
}
