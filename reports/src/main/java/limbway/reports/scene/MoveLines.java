package limbway.reports.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

import limbway.model.body.LocomotorMode;
import limbway.model.graph.RouteGraph;

/**
 * The moves of a route graph as lines, one node for each locomotor mode.
 *
 * <p>All share one list of vertices, in which each hold stands under its number; each pair of indices is one move, from
 * hold to hold.
 */
final class MoveLines {

    private final RouteGraph graph;
    private final Vertices holds;

    MoveLines(RouteGraph graph) {
        this.graph = graph;
        this.holds = Lines.vertices(
                IntStream.range(0, graph.holdCount()).mapToObj(graph::place).toList());
    }

    /** Moves by mode under one name; modes without moves are left out. */
    SceneNode group(String name, IntPredicate wanted) {
        List<SceneNode> modes = new ArrayList<>();
        for (LocomotorMode mode : LocomotorMode.values()) {
            int[] ends = IntStream.range(0, graph.moveCount())
                    .filter(move -> graph.mode(move) == mode && wanted.test(move))
                    .flatMap(move -> IntStream.of(graph.from(move), graph.to(move)))
                    .toArray();
            if (ends.length > 0) {
                Part lines = new Part(new Mesh(Mesh.Drawing.LINES, holds, ends), Finish.of(mode));
                modes.add(SceneNode.thing("moves", mode.word(), lines).telling("moves", ends.length / 2));
            }
        }
        return SceneNode.group(name, modes);
    }
}
