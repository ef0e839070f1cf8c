package limbway.model.volume;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

import org.locationtech.jts.geom.Polygon;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.geometry.Triangle;
import limbway.model.graph.Grasp;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.OpenGround;
import limbway.model.graph.RouteGraph;
import limbway.model.graph.UsableLine;

/**
 * What a body can be on: pieces of support that it can hold or walk on, sides of panels, decks, crowns and ground, as far
 * as moves that it can make lead there.
 */
final class Footholds {

    /** A hold this near to a shape is a hold of it. */
    private static final double SAME_PLACE_M = 1e-6;

    /** A hold this near to a part of the ground stands on it: holds at the foot of walls lie on its edge. */
    private static final double SAME_GROUND_M = 1e-5;

    private final List<Shape> aloft = new ArrayList<>();
    private final List<Shape> ground = new ArrayList<>();
    private final PanelSides panels;
    private final SortedPlaces reached;
    private final SortedPlaces lost;
    private double floorM2;

    Footholds(Enclosure enclosure, RouteGraph graph, MoveCosts costs) {
        ReachedHolds holds = new ReachedHolds(graph, costs);
        reached = new SortedPlaces(holds.places(true));
        lost = new SortedPlaces(holds.places(false));
        for (UsableLine line : Grasp.usableLines(costs.body(), enclosure.supports())) {
            addLine(line);
        }
        for (Platform platform : enclosure.platforms()) {
            addDeck(platform);
        }
        for (Crown crown : enclosure.crowns()) {
            addCrown(crown);
        }
        panels = new PanelSides(enclosure, graph, holds);
        aloft.addAll(panels.sheets());
        addGround(enclosure, holds);
    }

    /** The whole line or, where live wire or a wall cuts it, the stretches between holds that are reached. */
    private void addLine(UsableLine line) {
        List<Point> kept = on(line.axis(), reached);
        List<Point> gone = on(line.axis(), lost);
        gone.removeIf(place -> kept.stream().anyMatch(other -> other.distanceM(place) <= SAME_PLACE_M));
        if (gone.isEmpty()) {
            if (!kept.isEmpty()) {
                aloft.add(new Bar(line.axis(), line.diameterM() / 2));
            }
            return;
        }
        double[] keptAt = shares(line.axis(), kept);
        double[] goneAt = shares(line.axis(), gone);
        int g = 0;
        for (int i = 0; i < keptAt.length; i++) {
            int first = i;
            while (g < goneAt.length && goneAt[g] < keptAt[i]) {
                g++;
            }
            while (i + 1 < keptAt.length && (g == goneAt.length || keptAt[i + 1] < goneAt[g])) {
                i++;
            }
            Segment stretch =
                    new Segment(line.axis().at(keptAt[first]), line.axis().at(keptAt[i]));
            aloft.add(new Bar(stretch, line.diameterM() / 2));
        }
    }

    private static List<Point> on(Segment axis, SortedPlaces places) {
        return places.within(axis.a(), axis.b(), SAME_PLACE_M, axis::distanceM);
    }

    private static double[] shares(Segment axis, List<Point> places) {
        return places.stream().mapToDouble(axis::nearestShare).sorted().toArray();
    }

    private void addDeck(Platform platform) {
        PlanArea area = PlanArea.of(platform.outline());
        if (isReached(area.box(), platform.zM(), platform.zM(), p -> platform.nearestTo(p)
                .distanceM(p))) {
            aloft.add(new Level(area, platform.zM()));
            floorM2 += area.areaM2();
        }
    }

    private void addCrown(Crown crown) {
        Drum drum = new Drum(crown);
        if (isReached(drum.planBox(), crown.baseZM(), crown.topZM(), p -> drum.planDistanceM(p.xM(), p.yM()))) {
            aloft.add(drum);
        }
    }

    private boolean isReached(PlanBox box, double lowM, double highM, ToDoubleFunction<Point> awayM) {
        Point low = new Point(box.westM(), box.southM(), lowM);
        Point high = new Point(box.eastM(), box.northM(), highM);
        return !reached.within(low, high, SAME_PLACE_M, awayM).isEmpty();
    }

    private void addGround(Enclosure enclosure, ReachedHolds holds) {
        List<Point> standing = holds.onGround();
        for (Polygon part : OpenGround.parts(enclosure)) {
            PlanArea area = new PlanArea(part);
            if (holds.fromResources()
                    && standing.stream().noneMatch(p -> area.distanceM(p.xM(), p.yM()) <= SAME_GROUND_M)) {
                continue;
            }
            floorM2 += area.areaM2();
            if (enclosure.ground().terrain().isLevel()) {
                ground.add(new Level(area, 0));
            }
            for (Triangle triangle : enclosure.ground().terrain().triangles()) {
                ground.addAll(Sheet.over(Extent.facet(triangle), part));
            }
        }
    }

    /** Everything above the ground. */
    List<Shape> aloft() {
        return List.copyOf(aloft);
    }

    /** The open ground to which the body comes. */
    List<Shape> ground() {
        return List.copyOf(ground);
    }

    UsedSides usedSides() {
        return panels.used();
    }

    /** Area that can be walked on, seen from above: that ground and the decks [m²]. */
    double floorM2() {
        return floorM2;
    }
}
