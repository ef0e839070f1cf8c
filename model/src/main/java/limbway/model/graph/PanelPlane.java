package limbway.model.graph;

import limbway.model.geometry.Corner;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/** The plane of a panel with coordinates of its own: u level along it, v up along it, d in front of it. */
final class PanelPlane {

    private static final double SKIN_M = 1e-6;

    private final Facet facet;
    private final Point origin;
    private final Point normal;
    private final Point along;
    private final Point up;
    private final Outline outline;

    PanelPlane(Facet facet) {
        this.facet = facet;
        this.origin = facet.corners().get(0);
        this.normal = facet.normal();
        double levelM = StrictMath.hypot(normal.xM(), normal.yM());
        this.along = levelM < SKIN_M ? new Point(1, 0, 0) : new Point(-normal.yM() / levelM, normal.xM() / levelM, 0);
        this.up = new Point(
                normal.yM() * along.zM() - normal.zM() * along.yM(),
                normal.zM() * along.xM() - normal.xM() * along.zM(),
                normal.xM() * along.yM() - normal.yM() * along.xM());
        this.outline = new Outline(facet.corners().stream()
                .map(corner -> new Corner(uM(corner), vM(corner)))
                .toList());
    }

    Facet facet() {
        return facet;
    }

    /** The shape of the panel in its own plane. */
    Outline outline() {
        return outline;
    }

    double uM(Point p) {
        return p.minus(origin).dot(along);
    }

    double vM(Point p) {
        return p.minus(origin).dot(up);
    }

    /** Distance in front of the panel [m], negative behind it. */
    double frontM(Point p) {
        return p.minus(origin).dot(normal);
    }

    Point at(double uM, double vM, double frontM) {
        return origin.plus(along.times(uM)).plus(up.times(vM)).plus(normal.times(frontM));
    }

    /**
     * Where a way passes through the panel or ends in it, its edge included; null where it does not, or lies wholly in its
     * plane. What lies in the plane of the wire has no side, so nothing may lead there from either.
     */
    Point crossing(Point a, Point b) {
        double before = frontM(a);
        double after = frontM(b);
        boolean fromPlane = Math.abs(before) < SKIN_M;
        boolean toPlane = Math.abs(after) < SKIN_M;
        if ((fromPlane && toPlane) || (!fromPlane && !toPlane && before > 0 == after > 0)) {
            return null;
        }
        Point through = new Segment(a, b).at(before / (before - after));
        return outline.covers(uM(through), vM(through)) ? through : null;
    }
}
