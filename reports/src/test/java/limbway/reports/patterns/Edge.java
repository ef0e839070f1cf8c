package limbway.reports.patterns;

import java.util.List;
import java.util.function.Predicate;

import limbway.model.body.Body;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Point;
import limbway.sim.habitat.Habitat;

/** Who is near the edge of the enclosure. */
final class Edge {

    private Edge() {}

    /** Within arm's reach of the outline of the ground, in plan; an arm is half of the span. */
    static Predicate<Piece> withinReach() {
        return piece -> {
            Habitat habitat = piece.habitat();
            Body body = habitat.animals().get(piece.animal()).body();
            Point place = habitat.graph().place(piece.toHold());
            return distanceM(habitat.layout().enclosure().ground().outline().corners(), place) <= body.armSpanM() / 2;
        };
    }

    private static double distanceM(List<Corner> corners, Point place) {
        double least = Double.POSITIVE_INFINITY;
        for (int c = 0; c < corners.size(); c++) {
            Corner a = corners.get(c);
            Corner b = corners.get((c + 1) % corners.size());
            double dx = b.xM() - a.xM();
            double dy = b.yM() - a.yM();
            double along = ((place.xM() - a.xM()) * dx + (place.yM() - a.yM()) * dy) / (dx * dx + dy * dy);
            double t = Math.max(0, Math.min(1, along));
            least = Math.min(least, Math.hypot(place.xM() - a.xM() - t * dx, place.yM() - a.yM() - t * dy));
        }
        return least;
    }
}
