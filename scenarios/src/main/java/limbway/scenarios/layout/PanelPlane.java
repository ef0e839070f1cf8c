package limbway.scenarios.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

import limbway.model.geometry.Facet;
import limbway.model.geometry.Point;

/**
 * The plane of a panel, in which its shape is a polygon.
 *
 * @param origin a point of the plane
 * @param along a direction in the plane, of length 1
 * @param across the other direction in the plane, of length 1
 * @param normal the direction at right angles to the plane, of length 1
 */
record PanelPlane(Point origin, Point along, Point across, Point normal) {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    static PanelPlane of(Facet facet) {
        Point origin = facet.corners().get(0);
        Point normal = facet.normal();
        Point edge = facet.edges().stream()
                .map(side -> side.b().minus(side.a()))
                .max(Comparator.comparingDouble(Point::lengthM))
                .orElseThrow();
        Point flat = edge.minus(normal.times(normal.dot(edge)));
        Point along = flat.times(1 / flat.lengthM());
        Point across = new Point(
                normal.yM() * along.zM() - normal.zM() * along.yM(),
                normal.zM() * along.xM() - normal.xM() * along.zM(),
                normal.xM() * along.yM() - normal.yM() * along.xM());
        return new PanelPlane(origin, along, across, normal);
    }

    /** How far a point lies from the plane [m]. */
    double offM(Point point) {
        return Math.abs(normal.dot(point.minus(origin)));
    }

    /** Points of the plane as a polygon in it. */
    Polygon polygon(List<Point> corners) {
        List<Coordinate> ring = new ArrayList<>();
        corners.forEach(corner -> ring.add(seen(corner)));
        ring.add(ring.get(0).copy());
        return FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
    }

    /** How far a point lies from the panel of some corners [m]. */
    double distanceM(Point point, List<Point> corners) {
        return Math.hypot(offM(point), polygon(corners).distance(FACTORY.createPoint(seen(point))));
    }

    private Coordinate seen(Point point) {
        Point from = point.minus(origin);
        return new Coordinate(along.dot(from), across.dot(from));
    }
}
