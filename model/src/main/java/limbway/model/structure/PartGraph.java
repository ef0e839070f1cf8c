package limbway.model.structure;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

import org.jgrapht.Graph;
import org.jgrapht.graph.AsUnmodifiableGraph;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;

import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;

/**
 * What one body can be on off the ground, as a graph: supports, decks and crowns joined where it can move between them.
 *
 * <p>Vertices are parts and not holds, for three reasons. A keeper can read them: they carry the names of the scenario.
 * Holds are an artefact: halving their spacing would double the cut points. And an animal that lets nobody pass bars
 * more than a point. The price: such an animal is taken to bar the whole of a support, even where another could pass it
 * higher or lower on the same mast, so what is found here is the worst case. Two parts that touch in several places
 * count as joined once.
 */
public final class PartGraph {

    /** Name of holds that belong to the ground. */
    private static final String GROUND = "ground";

    private final RouteGraph graph;
    private final MoveCosts costs;
    private final int[] partOf;
    private final List<Part> parts = new ArrayList<>();
    private final SimpleGraph<Integer, DefaultEdge> joined = new SimpleGraph<>(DefaultEdge.class);

    private PartGraph(RouteGraph graph, MoveCosts costs) {
        this.graph = graph;
        this.costs = costs;
        this.partOf = new int[graph.holdCount()];
        Arrays.fill(partOf, -1);
    }

    /**
     * Condenses the moves of a body.
     *
     * @param graph the graph
     * @param costs the moves of the body on that graph
     * @return the parts that its moves touch, and their joins
     */
    public static PartGraph of(RouteGraph graph, MoveCosts costs) {
        PartGraph condensed = new PartGraph(graph, costs);
        condensed.findParts();
        condensed.join();
        return condensed;
    }

    /**
     * The parts; vertex {@code i} of the graph is the part at place {@code i}.
     *
     * @return parts in an order that depends only on the enclosure
     */
    public List<Part> parts() {
        return Collections.unmodifiableList(parts);
    }

    /**
     * The graph of the parts.
     *
     * @return an undirected graph without loops or double edges, not to be changed
     */
    public Graph<Integer, DefaultEdge> graph() {
        return new AsUnmodifiableGraph<>(joined);
    }

    /**
     * The parts from which a resource is used.
     *
     * @param resource place of the resource in {@link RouteGraph#resources()}
     * @return numbers of parts, ascending; empty where it is used from the ground only, or by nothing
     */
    public List<Integer> partsOf(int resource) {
        TreeSet<Integer> found = new TreeSet<>();
        for (int hold : graph.useHolds(resource)) {
            if (partOf[hold] >= 0) {
                found.add(partOf[hold]);
            }
        }
        return List.copyOf(found);
    }

    /**
     * The parts that carry a name.
     *
     * @param name id of a support, platform or crown
     * @return numbers of parts, ascending; empty if the body can make no move there
     */
    public List<Integer> partsNamed(String name) {
        List<Integer> found = new ArrayList<>();
        for (int part = 0; part < parts.size(); part++) {
            if (parts.get(part).name().equals(name)) {
                found.add(part);
            }
        }
        return found;
    }

    /** Number of resources of the enclosure. */
    int resourceCount() {
        return graph.resources().size();
    }

    private void findParts() {
        for (int hold = 0; hold < partOf.length; hold++) {
            if (partOf[hold] < 0 && !graph.support(hold).equals(GROUND) && canMoveFrom(hold)) {
                boolean touchesGround = fill(hold, parts.size());
                joined.addVertex(parts.size());
                parts.add(new Part(graph.support(hold), touchesGround));
            }
        }
    }

    private boolean canMoveFrom(int hold) {
        for (int move = graph.firstMove(hold); move < graph.firstMove(hold + 1); move++) {
            if (isStepOffGround(move)) {
                return true;
            }
        }
        return false;
    }

    /** Marks all holds of one name that hang together, and says whether one of them leads to the ground. */
    private boolean fill(int start, int part) {
        boolean touchesGround = false;
        ArrayDeque<Integer> queue = new ArrayDeque<>();
        partOf[start] = part;
        queue.add(start);
        while (!queue.isEmpty()) {
            int hold = queue.poll();
            for (int move = graph.firstMove(hold); move < graph.firstMove(hold + 1); move++) {
                if (costs.milliJ(move) == MoveCosts.IMPOSSIBLE || !graph.isStep(move)) {
                    continue;
                }
                int next = graph.to(move);
                if (graph.moveOnGround(move)) {
                    touchesGround = true;
                } else if (partOf[next] < 0 && graph.support(next).equals(graph.support(start))) {
                    partOf[next] = part;
                    queue.add(next);
                }
            }
        }
        return touchesGround;
    }

    private void join() {
        Map<Integer, TreeSet<Integer>> neighbours = new LinkedHashMap<>();
        for (int move = 0; move < graph.moveCount(); move++) {
            int from = partOf[graph.from(move)];
            int to = partOf[graph.to(move)];
            boolean possible = isStepOffGround(move);
            if (possible && from >= 0 && to >= 0 && from != to) {
                neighbours
                        .computeIfAbsent(Math.min(from, to), k -> new TreeSet<>())
                        .add(Math.max(from, to));
            }
        }
        neighbours.forEach((from, others) -> others.forEach(to -> joined.addEdge(from, to)));
    }

    /** Sways, leaps and drops lead one way and are no second way that anyone can count on. */
    private boolean isStepOffGround(int move) {
        return costs.milliJ(move) != MoveCosts.IMPOSSIBLE && graph.isStep(move) && !graph.moveOnGround(move);
    }
}
