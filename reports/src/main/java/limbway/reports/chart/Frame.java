package limbway.reports.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;

import limbway.model.enclosure.Enclosure;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/**
 * Turns metres of an enclosure into pixels of a picture; plan and side view share their scale from west to east.
 *
 * @param westM least x shown [m]
 * @param southM least y shown [m]
 * @param eastM greatest x shown [m]
 * @param northM greatest y shown [m]
 * @param topM greatest height shown [m]
 * @param pxPerM scale
 */
record Frame(double westM, double southM, double eastM, double northM, double topM, double pxPerM) {

    static final double LEFT_PX = 44;
    static final double PLAN_TOP_PX = 30;
    static final double BETWEEN_PX = 56;

    private static final double RIGHT_PX = 20;
    private static final double MOST_PLAN_PX = 600;
    private static final double MARGIN_M = 0.5;

    static Frame of(Enclosure enclosure) {
        double west = Double.POSITIVE_INFINITY;
        double south = Double.POSITIVE_INFINITY;
        double east = Double.NEGATIVE_INFINITY;
        double north = Double.NEGATIVE_INFINITY;
        for (Corner corner : enclosure.ground().outline().corners()) {
            west = Math.min(west, corner.xM() - MARGIN_M);
            east = Math.max(east, corner.xM() + MARGIN_M);
            south = Math.min(south, corner.yM() - MARGIN_M);
            north = Math.max(north, corner.yM() + MARGIN_M);
        }
        double top = 2;
        for (var support : enclosure.supports()) {
            for (Point point : support.axis().points()) {
                top = Math.max(top, point.zM());
            }
        }
        for (var platform : enclosure.platforms()) {
            top = Math.max(top, platform.zM());
        }
        for (var crown : enclosure.crowns()) {
            top = Math.max(top, crown.topZM());
        }
        double scale = Math.min((Style.WIDTH_PX - LEFT_PX - RIGHT_PX) / (east - west), MOST_PLAN_PX / (north - south));
        return new Frame(west, south, east, north, top + MARGIN_M, scale);
    }

    double xPx(double xM) {
        return LEFT_PX + (xM - westM) * pxPerM;
    }

    double planYPx(double yM) {
        return PLAN_TOP_PX + (northM - yM) * pxPerM;
    }

    double groundLinePx() {
        return planYPx(southM) + BETWEEN_PX + topM * pxPerM;
    }

    double sideYPx(double zM) {
        return groundLinePx() - zM * pxPerM;
    }

    Point2D inPlan(Point p) {
        return new Point2D.Double(xPx(p.xM()), planYPx(p.yM()));
    }

    Point2D fromSide(Point p) {
        return new Point2D.Double(xPx(p.xM()), sideYPx(p.zM()));
    }

    Line2D inPlan(Segment line) {
        return new Line2D.Double(inPlan(line.a()), inPlan(line.b()));
    }

    Line2D fromSide(Segment line) {
        return new Line2D.Double(fromSide(line.a()), fromSide(line.b()));
    }

    Path2D inPlan(Outline outline) {
        Path2D path = new Path2D.Double();
        for (Corner corner : outline.corners()) {
            Point2D p = inPlan(corner.atHeight(0));
            if (path.getCurrentPoint() == null) {
                path.moveTo(p.getX(), p.getY());
            } else {
                path.lineTo(p.getX(), p.getY());
            }
        }
        path.closePath();
        return path;
    }
}
