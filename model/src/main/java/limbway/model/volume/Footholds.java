package limbway.model.volume;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.geometry.Point;
import limbway.model.graph.Grasp;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.graph.UsableLine;

/**
 * What a body can be on: pieces of support that it can hold or walk on, decks and crowns, as far as moves that it can
 * make lead there from the ground or from a resource.
 */
final class Footholds {

    /** A hold this near to a shape is a hold of it. */
    private static final double SAME_PLACE_M = 1e-6;

    private final PlanArea walkable;
    private final List<Shape> aloft = new ArrayList<>();
    private double decksM2;

    Footholds(Enclosure enclosure, RouteGraph graph, MoveCosts costs) {
        walkable = PlanArea.of(enclosure.ground());
        SortedPlaces reached = new SortedPlaces(reachedHolds(graph, costs));
        for (UsableLine line : Grasp.usableLines(costs.body(), enclosure.supports())) {
            if (reached.anyWithin(line.axis().a(), line.axis().b(), SAME_PLACE_M, line.axis()::distanceM)) {
                aloft.add(new Bar(line.axis(), line.diameterM() / 2));
            }
        }
        for (Platform platform : enclosure.platforms()) {
            PlanArea area = PlanArea.of(platform.outline());
            PlanBox box = area.box();
            Point low = new Point(box.westM(), box.southM(), platform.zM());
            Point high = new Point(box.eastM(), box.northM(), platform.zM());
            if (reached.anyWithin(
                    low, high, SAME_PLACE_M, p -> platform.nearestTo(p).distanceM(p))) {
                aloft.add(new Level(area, platform.zM()));
                decksM2 += area.areaM2();
            }
        }
        for (Crown crown : enclosure.crowns()) {
            Drum drum = new Drum(crown);
            PlanBox box = drum.planBox();
            Point low = new Point(box.westM(), box.southM(), crown.baseZM());
            Point high = new Point(box.eastM(), box.northM(), crown.topZM());
            if (reached.anyWithin(low, high, SAME_PLACE_M, p -> drum.planDistanceM(p.xM(), p.yM()))) {
                aloft.add(drum);
            }
        }
    }

    /** Everything above the ground. */
    List<Shape> aloft() {
        return List.copyOf(aloft);
    }

    Shape ground() {
        return new Level(walkable, 0);
    }

    /** Level area that can be walked on: the open ground and the decks [m²]. */
    double floorM2() {
        return walkable.areaM2() + decksM2;
    }

    private List<Point> reachedHolds(RouteGraph graph, MoveCosts costs) {
        boolean[] seen = new boolean[graph.holdCount()];
        ArrayDeque<Integer> queue = new ArrayDeque<>();
        for (int r = 0; r < graph.resources().size(); r++) {
            for (int hold : graph.useHolds(r)) {
                visit(hold, seen, queue);
            }
        }
        for (int hold = 0; hold < seen.length; hold++) {
            Point place = graph.place(hold);
            if (graph.onGround(hold) && walkable.distanceM(place.xM(), place.yM()) <= SAME_PLACE_M) {
                visit(hold, seen, queue);
            }
        }
        List<Point> places = new ArrayList<>();
        while (!queue.isEmpty()) {
            int hold = queue.poll();
            places.add(graph.place(hold));
            for (int move = graph.firstMove(hold); move < graph.firstMove(hold + 1); move++) {
                if (costs.milliJ(move) != MoveCosts.IMPOSSIBLE) {
                    visit(graph.to(move), seen, queue);
                }
            }
        }
        return places;
    }

    private static void visit(int hold, boolean[] seen, ArrayDeque<Integer> queue) {
        if (!seen[hold]) {
            seen[hold] = true;
            queue.add(hold);
        }
    }
}
