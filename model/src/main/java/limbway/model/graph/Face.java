package limbway.model.graph;

import java.util.LinkedHashSet;
import java.util.Set;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.DistanceOp;

import limbway.model.enclosure.Panel;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/**
 * One side of a panel: the places where hands and feet hold it from that side, a hand's thickness off the plane of the
 * wire and as far within its edge, so that what lies on the two sides never meets.
 */
final class Face {

    /** How far holds lie in front of the wire. */
    static final double OFF_M = 0.02;

    private static final double WITHIN_EDGE_M = 2 * OFF_M;

    private final Panel panel;
    private final PanelPlane plane;
    private final double side;
    private final Carrier carrier;
    private final double givesNPerM;
    private final Geometry reachable;
    private final GeometryFactory factory = new GeometryFactory();
    private final Set<Integer> holds = new LinkedHashSet<>();

    Face(Panel panel, PanelPlane plane, boolean front, Carrier carrier) {
        this.panel = panel;
        this.plane = plane;
        this.side = front ? 1 : -1;
        this.carrier = carrier;
        this.givesNPerM = carrier.givesNPerM();
        Polygon whole = plane.outline().toPolygon();
        Geometry inset = whole.buffer(-WITHIN_EDGE_M, 2);
        this.reachable = inset.isEmpty() ? whole.getInteriorPoint() : inset;
    }

    Panel panel() {
        return panel;
    }

    PanelPlane plane() {
        return plane;
    }

    Carrier carrier() {
        return carrier;
    }

    Set<Integer> holds() {
        return holds;
    }

    /** Whether a place lies on this side of the panel's plane, or in it. */
    boolean isBefore(Point place) {
        return side * plane.frontM(place) > -1e-6;
    }

    /** Whether a place lies within a hand's thickness of the panel's plane, where its side cannot be told. */
    boolean isInPlane(Point place) {
        return Math.abs(plane.frontM(place)) < OFF_M;
    }

    /** The place of this side that is nearest to a place. */
    Point nearestTo(Point place) {
        Coordinate at = new Coordinate(plane.uM(place), plane.vM(place));
        Geometry spot = factory.createPoint(at);
        Coordinate nearest = reachable.covers(spot) ? at : DistanceOp.nearestPoints(reachable, spot)[0];
        return plane.at(nearest.x, nearest.y, side * OFF_M);
    }

    double distanceM(Point place) {
        return nearestTo(place).distanceM(place);
    }

    /** A place on this side as one end of a move; makes the hold if need be. */
    Grip grip(Draft draft, Point onFace) {
        int hold = draft.holds().at(onFace, panel.id());
        holds.add(hold);
        return new Grip(hold, carrier, 0, givesNPerM);
    }

    /** A place beyond an edge, seen from a place on it. */
    Point beyond(Segment edge, Point onEdge) {
        Point direction = edge.b().minus(edge.a()).times(1 / edge.lengthM());
        double du = direction.dot(plane.at(1, 0, 0).minus(plane.at(0, 0, 0)));
        double dv = direction.dot(plane.at(0, 1, 0).minus(plane.at(0, 0, 0)));
        double uM = plane.uM(onEdge);
        double vM = plane.vM(onEdge);
        Outline outline = plane.outline();
        boolean rightIsOut = !outline.covers(uM + dv * OFF_M, vM - du * OFF_M);
        double out = rightIsOut ? 1 : -1;
        return plane.at(uM + out * dv * WITHIN_EDGE_M, vM - out * du * WITHIN_EDGE_M, 0);
    }

    /** A place in the panel's own plane, for thinning out. */
    Point flat(Point place) {
        Corner corner = new Corner(plane.uM(place), plane.vM(place));
        return corner.atHeight(0);
    }
}
