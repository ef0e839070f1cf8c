package limbway.model.structure;

import java.util.List;
import java.util.stream.IntStream;

import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.structure.Joints.Bridge;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** Joints of graphs whose answers are known without computing. */
class JointsTest {

    private static SimpleGraph<Integer, DefaultEdge> graph(int... ends) {
        SimpleGraph<Integer, DefaultEdge> graph = new SimpleGraph<>(DefaultEdge.class);
        for (int i = 0; i < ends.length; i += 2) {
            graph.addVertex(ends[i]);
            graph.addVertex(ends[i + 1]);
            graph.addEdge(ends[i], ends[i + 1]);
        }
        return graph;
    }

    /**
     * Friendships of 34 members, Zachary 1977, J. Anthropol. Res. 33:452-473, typed from memory and checked by counts:
     * 78 edges, 16 of member 1, 12 of member 33, 17 of member 34. Only member 12 hangs on member 1 alone.
     */
    @Test
    @Tag("published")
    void theKarateClubIsPartedByItsFirstMemberOnly() {
        var club = graph(
                1, 2, 1, 3, 2, 3, 1, 4, 2, 4, 3, 4, 1, 5, 1, 6, 1, 7, 5, 7, 6, 7, 1, 8, 2, 8, 3, 8, 4, 8, 1, 9, 3, 9, 3,
                10, 1, 11, 5, 11, 6, 11, 1, 12, 1, 13, 4, 13, 1, 14, 2, 14, 3, 14, 4, 14, 6, 17, 7, 17, 1, 18, 2, 18, 1,
                20, 2, 20, 1, 22, 2, 22, 24, 26, 25, 26, 3, 28, 24, 28, 25, 28, 3, 29, 24, 30, 27, 30, 2, 31, 9, 31, 1,
                32, 25, 32, 26, 32, 29, 32, 3, 33, 9, 33, 15, 33, 16, 33, 19, 33, 21, 33, 23, 33, 24, 33, 30, 33, 31,
                33, 32, 33, 9, 34, 10, 34, 14, 34, 15, 34, 16, 34, 19, 34, 20, 34, 21, 34, 23, 34, 24, 34, 27, 34, 28,
                34, 29, 34, 30, 34, 31, 34, 32, 34, 33, 34);
        assertEquals(34, club.vertexSet().size());
        assertEquals(78, club.edgeSet().size());
        assertEquals(List.of(16, 12, 17), List.of(club.degreeOf(1), club.degreeOf(33), club.degreeOf(34)));
        Joints joints = Joints.of(club);
        assertEquals(List.of(1), joints.cutPoints());
        assertEquals(List.of(new Bridge(1, 12)), joints.bridges());
        assertEquals(List.of(12), joints.deadEnds());
        assertEquals(2, joints.blocks().size());
        assertEquals(List.of(12), joints.blocks().get(1));
    }

    @Test
    @Tag("derived")
    void aPathIsPartedEverywhereButAtItsEnds() {
        Joints joints = Joints.of(graph(0, 1, 1, 2, 2, 3, 3, 4));
        assertEquals(List.of(1, 2, 3), joints.cutPoints());
        assertEquals(4, joints.bridges().size());
        assertEquals(List.of(0, 4), joints.deadEnds());
        assertEquals(5, joints.blocks().size());
    }

    @Test
    @Tag("derived")
    void aCycleIsPartedNowhere() {
        Joints joints = Joints.of(graph(0, 1, 1, 2, 2, 3, 3, 0));
        assertEquals(new Joints(List.of(), List.of(), List.of(), List.of(List.of(0, 1, 2, 3))), joints);
    }

    @Test
    @Tag("derived")
    void aLadderIsPartedNowhereUntilItsFirstRungAndRailAreLost() {
        int[] ladder = {0, 1, 2, 3, 4, 5, 6, 7, 0, 2, 2, 4, 4, 6, 1, 3, 3, 5, 5, 7};
        assertEquals(List.of(), Joints.of(graph(ladder)).cutPoints());
        assertEquals(List.of(), Joints.of(graph(ladder)).bridges());
        var broken = graph(ladder);
        broken.removeEdge(0, 1);
        Joints joints = Joints.of(broken);
        assertEquals(List.of(2, 3), joints.cutPoints());
        assertEquals(List.of(new Bridge(0, 2), new Bridge(1, 3)), joints.bridges());
        assertEquals(List.of(0, 1), joints.deadEnds());
    }

    @Test
    @Tag("derived")
    void twoCyclesThatShareAVertexHaveACutPointButNoBridge() {
        Joints joints = Joints.of(graph(0, 1, 1, 2, 2, 0, 2, 3, 3, 4, 4, 2));
        assertEquals(List.of(2), joints.cutPoints());
        assertEquals(List.of(), joints.bridges());
        assertEquals(List.of(List.of(0, 1, 2, 3, 4)), joints.blocks());
    }

    /** A search that calls itself once for each vertex would run out of stack. */
    @Test
    @Tag("derived")
    void aLongPathIsSearched() {
        int n = 20_000;
        int[] ends = IntStream.range(0, n).flatMap(i -> IntStream.of(i, i + 1)).toArray();
        assertEquals(n - 1, Joints.of(graph(ends)).cutPoints().size());
    }
}
