package limbway.model.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;

import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.BiconnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import limbway.model.scene.RandomEnclosure;
import limbway.model.structure.Joints.Bridge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/**
 * Everything again by taking each part and each join away in turn and painting what is still joined, on random
 * enclosures; shares no step with the code that it checks.
 */
@Tag("derived")
class StructureByRemovalTest {

    private static final int NONE = -1;

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 50);
    }

    private static final List<PartGraph> PARTS = seeds().mapToObj(
                    seed -> Frames.of(RandomEnclosure.of(seed), Frames.BODIES.get(seed % Frames.BODIES.size())))
            .toList();

    private static PartGraph parts(int seed) {
        return PARTS.get(seed - 1);
    }

    private static List<int[]> edges(Graph<Integer, DefaultEdge> graph) {
        List<int[]> edges = new ArrayList<>();
        for (DefaultEdge edge : graph.edgeSet()) {
            int a = graph.getEdgeSource(edge);
            int b = graph.getEdgeTarget(edge);
            edges.add(new int[] {Math.min(a, b), Math.max(a, b)});
        }
        return edges;
    }

    /** Colour of each vertex by spreading the least number until nothing changes; the lost vertex keeps -1. */
    private static int[] painted(int n, List<int[]> edges, int lostVertex, int lostEdge) {
        int[] colour = IntStream.range(0, n).toArray();
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int e = 0; e < edges.size(); e++) {
                int a = edges.get(e)[0];
                int b = edges.get(e)[1];
                if (e != lostEdge && a != lostVertex && b != lostVertex && colour[a] != colour[b]) {
                    colour[a] = Math.min(colour[a], colour[b]);
                    colour[b] = colour[a];
                    changed = true;
                }
            }
        }
        if (lostVertex != NONE) {
            colour[lostVertex] = NONE;
        }
        return colour;
    }

    private static long pieces(int[] colour) {
        return IntStream.of(colour).filter(c -> c != NONE).distinct().count();
    }

    private static boolean joined(int[] colour, List<Integer> some, List<Integer> others) {
        return some.stream().anyMatch(a -> colour[a] != NONE && others.stream().anyMatch(b -> colour[b] == colour[a]));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void cutPointsAndBridgesAreThoseWhoseLossLeavesMorePieces(int seed) {
        PartGraph parts = parts(seed);
        int n = parts.parts().size();
        List<int[]> edges = edges(parts.graph());
        long whole = pieces(painted(n, edges, NONE, NONE));
        List<Integer> cuts = new ArrayList<>();
        for (int v = 0; v < n; v++) {
            if (pieces(painted(n, edges, v, NONE)) > whole) {
                cuts.add(v);
            }
        }
        List<Bridge> bridges = new ArrayList<>();
        for (int e = 0; e < edges.size(); e++) {
            if (pieces(painted(n, edges, NONE, e)) > whole) {
                bridges.add(new Bridge(edges.get(e)[0], edges.get(e)[1]));
            }
        }
        Joints joints = Joints.of(parts.graph());
        assertEquals(cuts, joints.cutPoints(), "RandomEnclosure.of(" + seed + "L)");
        assertEquals(bridges.size(), joints.bridges().size(), "RandomEnclosure.of(" + seed + "L)");
        assertTrue(joints.bridges().containsAll(bridges), "RandomEnclosure.of(" + seed + "L)");
        assertEquals(whole + bridges.size(), joints.blocks().size(), "RandomEnclosure.of(" + seed + "L)");
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void jGraphTFindsTheSame(int seed) {
        PartGraph parts = parts(seed);
        BiconnectivityInspector<Integer, DefaultEdge> inspector = new BiconnectivityInspector<>(parts.graph());
        Joints joints = Joints.of(parts.graph());
        assertEquals(List.copyOf(new TreeSet<>(inspector.getCutpoints())), joints.cutPoints());
        assertEquals(inspector.getBridges().size(), joints.bridges().size());
        for (Bridge bridge : joints.bridges()) {
            assertTrue(inspector.getBridges().contains(parts.graph().getEdge(bridge.one(), bridge.other())));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void fewerThanTwoWaysMeansThatOneLossParts(int seed) {
        PartGraph parts = parts(seed);
        int n = parts.parts().size();
        List<int[]> edges = edges(parts.graph());
        DisjointWays ways = new DisjointWays(parts);
        for (int r = 0; r < parts.resourceCount(); r++) {
            for (int s = 0; s < r; s++) {
                List<Integer> own = parts.partsOf(r);
                List<Integer> other = parts.partsOf(s);
                int found = ways.between(r, s);
                String where = "RandomEnclosure.of(" + seed + "L), resources " + r + " and " + s;
                assertEquals(found, ways.between(s, r), where);
                if (own.stream().anyMatch(other::contains)) {
                    assertEquals(Integer.MAX_VALUE, found, where);
                    continue;
                }
                assertEquals(joined(painted(n, edges, NONE, NONE), own, other), found > 0, where);
                boolean oneLossParts =
                        IntStream.range(0, edges.size()).anyMatch(e -> !joined(painted(n, edges, NONE, e), own, other));
                assertEquals(found < 2, oneLossParts || found == 0, where);
                // ways that share no part: without the joins that lead straight from one to the other, one part's loss
                // must not part them
                List<int[]> indirect = edges.stream()
                        .filter(edge -> !straight(edge, own, other) && !straight(edge, other, own))
                        .toList();
                int direct = edges.size() - indirect.size();
                boolean oneBars = IntStream.range(0, n)
                        .filter(v -> !own.contains(v) && !other.contains(v))
                        .anyMatch(v -> !joined(painted(n, indirect, v, NONE), own, other));
                boolean around = joined(painted(n, indirect, NONE, NONE), own, other);
                int apart = direct + (around ? oneBars ? 1 : 2 : 0);
                assertEquals(Math.min(2, apart), Math.min(2, ways.apart(r, s)), where);
            }
        }
    }

    private static boolean straight(int[] edge, List<Integer> own, List<Integer> other) {
        return own.contains(edge[0]) && other.contains(edge[1]);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whoeverBlocksCutsOffWhatPaintingCutsOff(int seed) {
        PartGraph parts = parts(seed);
        int n = parts.parts().size();
        List<int[]> edges = edges(parts.graph());
        int[] whole = painted(n, edges, NONE, NONE);
        List<Blocking> found = Blocking.all(parts);
        for (int v = 0; v < n; v++) {
            int[] colour = painted(n, edges, v, NONE);
            List<Integer> beside = new ArrayList<>();
            for (int r = 0; r < parts.resourceCount(); r++) {
                if (!parts.partsOf(r).contains(v) && joined(whole, parts.partsOf(r), List.of(v))) {
                    beside.add(r);
                }
            }
            boolean parted = beside.stream().anyMatch(r -> beside.stream()
                    .anyMatch(s -> !joined(colour, parts.partsOf(r), parts.partsOf(s))
                            && joined(whole, parts.partsOf(r), parts.partsOf(s))));
            int part = v;
            String where = "RandomEnclosure.of(" + seed + "L), " + parts.parts().get(v);
            assertEquals(parted, found.stream().anyMatch(b -> b.part() == part), where);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void oneExitMeansThatOneAnimalShutsIn(int seed) {
        PartGraph parts = parts(seed);
        int n = parts.parts().size();
        List<int[]> edges = edges(parts.graph());
        DisjointWays ways = new DisjointWays(parts);
        List<Integer> goals = IntStream.range(0, n)
                .filter(part -> parts.parts().get(part).touchesGround())
                .boxed()
                .toList();
        for (int v = 0; v < n; v++) {
            int part = v;
            List<Integer> others = goals.stream().filter(goal -> goal != part).toList();
            boolean out = joined(painted(n, edges, NONE, NONE), List.of(v), others);
            boolean shut = IntStream.range(0, n)
                    .filter(lost -> lost != part)
                    .anyMatch(lost -> !joined(painted(n, edges, lost, NONE), List.of(part), others));
            int found = ways.exits(v, goals);
            String where = "RandomEnclosure.of(" + seed + "L), " + parts.parts().get(v) + ", exits " + found;
            assertEquals(out, found > 0, where);
            assertEquals(found < 2, shut || !out, where);
        }
    }

    /** The laws above would hold on graphs without joints too; here are some. */
    @Test
    void theRandomEnclosuresHaveAllOfIt() {
        int cuts = 0;
        int blocking = 0;
        int twoWays = 0;
        for (int seed = 1; seed <= 20; seed++) {
            PartGraph parts = parts(seed);
            cuts += Joints.of(parts.graph()).cutPoints().size();
            blocking += Blocking.all(parts).size();
            twoWays += new DisjointWays(parts).between(1, 2) == 2 ? 1 : 0;
        }
        assertTrue(cuts > 20 && blocking > 5 && twoWays > 0, cuts + ", " + blocking + ", " + twoWays);
    }
}
