package limbway.model.link;

import java.util.ArrayList;
import java.util.List;

import limbway.model.geometry.Segment;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;

/**
 * Moves along one thing that are so short that a body pays the least of 1 mJ for them: each makes the line dearer, which
 * trees that were built without one of its ends do not know.
 */
final class LeastPrices {

    /** Places closer than this are one hold [m]. */
    private static final double SAME_PLACE_M = 1e-6;

    private LeastPrices() {}

    /** Whether a part of an enclosure has such a move that the enclosure had not. */
    static boolean hasNew(MoveCosts before, RouteGraph old, MoveCosts after, RouteGraph part) {
        List<Segment> fresh = shortest(part, after);
        List<Segment> known = fresh.isEmpty() ? List.of() : shortest(old, before);
        return !fresh.stream().allMatch(move -> known.stream().anyMatch(other -> isSame(move, other)));
    }

    private static List<Segment> shortest(RouteGraph graph, MoveCosts costs) {
        List<Segment> moves = new ArrayList<>();
        for (int move = 0; move < graph.moveCount(); move++) {
            int from = graph.from(move);
            int to = graph.to(move);
            if (costs.milliJ(move) == 1
                    && graph.lengthM(move) > 0
                    && graph.support(from).equals(graph.support(to))) {
                moves.add(new Segment(graph.place(from), graph.place(to)));
            }
        }
        return moves;
    }

    private static boolean isSame(Segment one, Segment other) {
        return one.a().distanceM(other.a()) < SAME_PLACE_M && one.b().distanceM(other.b()) < SAME_PLACE_M;
    }
}
