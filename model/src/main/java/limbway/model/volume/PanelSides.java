package limbway.model.volume;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Panel;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Point;
import limbway.model.graph.RouteGraph;

/**
 * The sides of panels on which a body can climb: those with a reached hold from which it can move on over the panel, as
 * far as holds are reached.
 */
final class PanelSides {

    private final List<Shape> sheets = new ArrayList<>();
    private final Set<String> front = new LinkedHashSet<>();
    private final Set<String> back = new LinkedHashSet<>();

    PanelSides(Enclosure enclosure, RouteGraph graph, ReachedHolds reached) {
        for (Panel panel : enclosure.panels()) {
            List<Integer> holds = new ArrayList<>();
            for (int hold = 0; hold < graph.holdCount(); hold++) {
                if (graph.support(hold).equals(panel.id())) {
                    holds.add(hold);
                }
            }
            add(panel, Sheet.Side.FRONT, front, holds, graph, reached);
            add(panel, Sheet.Side.BACK, back, holds, graph, reached);
        }
    }

    private void add(
            Panel panel,
            Sheet.Side side,
            Set<String> used,
            List<Integer> holds,
            RouteGraph graph,
            ReachedHolds reached) {
        List<Integer> here = holds.stream()
                .filter(hold -> isInFront(panel.facet(), graph.place(hold)) == (side == Sheet.Side.FRONT))
                .toList();
        List<Point> kept = new ArrayList<>();
        List<Point> lost = new ArrayList<>();
        for (int hold : here) {
            (climbsFrom(hold, graph, reached) ? kept : lost).add(graph.place(hold));
        }
        if (kept.isEmpty()) {
            return;
        }
        used.add(panel.id());
        sheets.add(lost.isEmpty() ? new Sheet(panel.facet(), side) : Sheet.around(panel.facet(), side, lost, kept));
    }

    private static boolean isInFront(Facet facet, Point place) {
        return facet.normal().dot(place.minus(facet.corners().get(0))) > 0;
    }

    private static boolean climbsFrom(int hold, RouteGraph graph, ReachedHolds reached) {
        for (int move = graph.firstMove(hold); reached.isReached(hold) && move < graph.firstMove(hold + 1); move++) {
            if (graph.support(graph.to(move)).equals(graph.support(hold)) && reached.isPossible(move)) {
                return true;
            }
        }
        return false;
    }

    /** What the body can be on. */
    List<Shape> sheets() {
        return List.copyOf(sheets);
    }

    UsedSides used() {
        return new UsedSides(front, back);
    }
}
