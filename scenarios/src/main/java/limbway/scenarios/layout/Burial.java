package limbway.scenarios.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import limbway.model.geometry.Facet;
import limbway.model.geometry.Point;
import limbway.model.geometry.Terrain;
import limbway.model.geometry.Triangle;

/**
 * Where a flat shape dips deepest below ground of triangles.
 *
 * <p>Ground and shape are both flat within one triangle, so that the deepest point is a corner of the shape, a top of the
 * ground under it, or where an edge of the shape crosses an edge of a triangle.
 *
 * @param point the deepest point of the shape
 * @param belowM how far it lies below the ground [m], above 0
 */
record Burial(Point point, double belowM) {

    /** The upward part of the normal of a shape that stands upright, with no ground under it but its edge. */
    private static final double UPRIGHT = 1e-6;

    /** The deepest point of a shape below the ground, or empty if none is more than {@code slackM} below it. */
    static Optional<Burial> deepest(List<Point> corners, Terrain terrain, double slackM) {
        List<Burial> found = new ArrayList<>();
        for (Triangle triangle : terrain.triangles()) {
            if (isNear(triangle, corners)) {
                under(triangle, corners, found);
            }
        }
        return found.stream().filter(one -> one.belowM > slackM).max(Comparator.comparingDouble(Burial::belowM));
    }

    private static boolean isNear(Triangle triangle, List<Point> corners) {
        List<Point> tops = List.of(triangle.a(), triangle.b(), triangle.c());
        return corners.stream().anyMatch(corner -> tops.stream().anyMatch(top -> top.xM() >= corner.xM()))
                && corners.stream().anyMatch(corner -> tops.stream().anyMatch(top -> top.xM() <= corner.xM()))
                && corners.stream().anyMatch(corner -> tops.stream().anyMatch(top -> top.yM() >= corner.yM()))
                && corners.stream().anyMatch(corner -> tops.stream().anyMatch(top -> top.yM() <= corner.yM()));
    }

    private static void under(Triangle triangle, List<Point> corners, List<Burial> found) {
        List<Point> tops = List.of(triangle.a(), triangle.b(), triangle.c());
        for (int i = 0; i < corners.size(); i++) {
            Point from = corners.get(i);
            Point to = corners.get((i + 1) % corners.size());
            if (triangle.covers(from.xM(), from.yM())) {
                found.add(new Burial(from, triangle.heightM(from.xM(), from.yM()) - from.zM()));
            }
            for (int k = 0; k < 3; k++) {
                crossing(from, to, tops.get(k), tops.get((k + 1) % 3))
                        .ifPresent(at -> found.add(new Burial(at, triangle.heightM(at.xM(), at.yM()) - at.zM())));
            }
        }
        Point normal = new Facet(corners).normal();
        if (Math.abs(normal.zM()) > UPRIGHT) {
            for (Point top : tops) {
                if (isInside(top, corners)) {
                    Point plane = corners.get(0);
                    double zM = plane.zM()
                            - (normal.xM() * (top.xM() - plane.xM()) + normal.yM() * (top.yM() - plane.yM()))
                                    / normal.zM();
                    found.add(new Burial(top.atHeight(zM), top.zM() - zM));
                }
            }
        }
    }

    /** Where two lines cross in plan, on the first of them. */
    private static Optional<Point> crossing(Point a, Point b, Point c, Point d) {
        double first = (b.xM() - a.xM()) * (d.yM() - c.yM()) - (b.yM() - a.yM()) * (d.xM() - c.xM());
        if (first == 0) {
            return Optional.empty();
        }
        double along = ((c.xM() - a.xM()) * (d.yM() - c.yM()) - (c.yM() - a.yM()) * (d.xM() - c.xM())) / first;
        double other = ((c.xM() - a.xM()) * (b.yM() - a.yM()) - (c.yM() - a.yM()) * (b.xM() - a.xM())) / first;
        return along >= 0 && along <= 1 && other >= 0 && other <= 1
                ? Optional.of(a.plus(b.minus(a).times(along)))
                : Optional.empty();
    }

    /** Whether a point lies inside an edge in plan: a line to the east crosses the edge an odd number of times. */
    private static boolean isInside(Point p, List<Point> corners) {
        boolean inside = false;
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            if ((a.yM() > p.yM()) != (b.yM() > p.yM())
                    && p.xM() < a.xM() + (p.yM() - a.yM()) / (b.yM() - a.yM()) * (b.xM() - a.xM())) {
                inside = !inside;
            }
        }
        return inside;
    }
}
