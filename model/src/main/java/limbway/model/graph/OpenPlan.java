package limbway.model.graph;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;

import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;

/**
 * A flat area with holes: which places lie in it, which see each other, and round which corners shortest ways turn.
 *
 * <p>Sight is tested by JTS against the area widened by a micrometre, so that ways along an edge and places computed on
 * an edge count as inside.
 */
final class OpenPlan {

    private static final double SLACK_M = 1e-6;

    private final GeometryFactory factory = new GeometryFactory();
    private final boolean everythingSeen;
    private final Geometry area;
    private final PreparedGeometry open;
    private final List<Corner> turns = new ArrayList<>();

    OpenPlan(Outline outline, List<Outline> holes) {
        this(outline, holes, List.of());
    }

    OpenPlan(Outline outline, List<Outline> holes, List<Geometry> otherHoles) {
        this(areaOf(outline, holes, otherHoles), holes.isEmpty() && otherHoles.isEmpty() && outline.isConvex());
    }

    /** The part of this plan that lies within a polygon. */
    OpenPlan within(Polygon part) {
        if (open.covers(part)) {
            return new OpenPlan(part, isConvex(part));
        }
        Geometry common = part.intersection(area);
        return new OpenPlan(common, common instanceof Polygon polygon && isConvex(polygon));
    }

    private static boolean isConvex(Polygon polygon) {
        return polygon.getNumInteriorRing() == 0
                && polygon.convexHull().getArea() - polygon.getArea() <= SLACK_M * SLACK_M;
    }

    private static Geometry areaOf(Outline outline, List<Outline> holes, List<Geometry> otherHoles) {
        Geometry area = outline.toPolygon();
        if (!holes.isEmpty() || !otherHoles.isEmpty()) {
            List<Geometry> closed = new ArrayList<>(otherHoles);
            for (Outline hole : holes) {
                closed.add(hole.toPolygon());
            }
            area = area.difference(UnaryUnionOp.union(closed));
        }
        return area;
    }

    private OpenPlan(Geometry area, boolean everythingSeen) {
        this.area = area;
        this.everythingSeen = everythingSeen;
        open = PreparedGeometryFactory.prepare(area.buffer(SLACK_M, 2));
        for (int i = 0; i < area.getNumGeometries(); i++) {
            if (area.getGeometryN(i) instanceof Polygon polygon) {
                addTurns(polygon.getExteriorRing(), true);
                for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
                    addTurns(polygon.getInteriorRingN(k), false);
                }
            }
        }
    }

    /** Corners that stick into the area; every shortest way turns only there. */
    List<Corner> turns() {
        return List.copyOf(turns);
    }

    boolean covers(double xM, double yM) {
        Point place = factory.createPoint(new Coordinate(xM, yM));
        return open.covers(place);
    }

    /** The parts of a line that lie in the area, its ends on the edge of it at most half the slack outside. */
    Geometry partsOf(LineString line) {
        return open.covers(line) ? line : line.intersection(area.buffer(SLACK_M / 2, 2));
    }

    boolean sees(limbway.model.geometry.Point a, limbway.model.geometry.Point b) {
        if (everythingSeen) {
            return true;
        }
        LineString way = factory.createLineString(
                new Coordinate[] {new Coordinate(a.xM(), a.yM()), new Coordinate(b.xM(), b.yM())});
        return open.covers(way);
    }

    /** With the area on the left of the ring, shortest ways turn at corners where the ring turns right. */
    private void addTurns(LinearRing ring, boolean areaInside) {
        Coordinate[] c = ring.getCoordinates();
        int n = c.length - 1;
        int outwards = Orientation.isCCW(c) == areaInside ? Orientation.CLOCKWISE : Orientation.COUNTERCLOCKWISE;
        for (int i = 0; i < n; i++) {
            if (Orientation.index(c[(i + n - 1) % n], c[i], c[i + 1]) == outwards) {
                turns.add(new Corner(c[i].x, c[i].y));
            }
        }
    }
}
