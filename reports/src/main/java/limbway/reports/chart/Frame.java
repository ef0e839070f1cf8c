package limbway.reports.chart;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.Building;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.HotWire;
import limbway.model.enclosure.Shading;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.geometry.Triangle;

/**
 * Turns metres of an enclosure into pixels of a picture; plan and side view share their scale from west to east.
 *
 * @param westM least x shown [m]
 * @param southM least y shown [m]
 * @param eastM greatest x shown [m]
 * @param northM greatest y shown [m]
 * @param lowM least height shown [m], 0 or less
 * @param topM greatest height shown [m]
 * @param structureTopM greatest height of what stands in the enclosure and bounds it [m]
 * @param pxPerM scale
 */
record Frame(
        double westM,
        double southM,
        double eastM,
        double northM,
        double lowM,
        double topM,
        double structureTopM,
        double pxPerM) {

    static final double LEFT_PX = 44;
    static final double PLAN_TOP_PX = 30;
    static final double BETWEEN_PX = 56;

    private static final double RIGHT_PX = 20;
    private static final double MOST_PLAN_PX = 600;
    private static final double MARGIN_M = 0.5;
    private static final double LEAST_TOP_M = 2;

    /** Of what stands beside the enclosure so much is shown: this share of its greater side, but at least [m]. */
    private static final double BEYOND_SHARE = 0.2;

    private static final double LEAST_BEYOND_M = 4;

    /** Of what lies below the ground or below water so much is shown [m]. */
    private static final double BELOW_M = 0.6;

    static Frame of(Enclosure enclosure) {
        List<Point> around = around(enclosure);
        List<Point> within = within(enclosure);
        double west = around.stream().mapToDouble(Point::xM).min().orElse(0) - MARGIN_M;
        double east = around.stream().mapToDouble(Point::xM).max().orElse(0) + MARGIN_M;
        double south = around.stream().mapToDouble(Point::yM).min().orElse(0) - MARGIN_M;
        double north = around.stream().mapToDouble(Point::yM).max().orElse(0) + MARGIN_M;
        double low = 0;
        double top = LEAST_TOP_M;
        for (List<Point> points : List.of(around, within)) {
            low = Math.min(low, points.stream().mapToDouble(Point::zM).min().orElse(0));
            top = Math.max(top, points.stream().mapToDouble(Point::zM).max().orElse(0));
        }
        double structureTop = top;
        double beyond = Math.max(LEAST_BEYOND_M, BEYOND_SHARE * Math.max(east - west, north - south));
        Envelope wide = new Envelope(west - beyond, east + beyond, south - beyond, north + beyond);
        for (Beside thing : beside(enclosure.shading())) {
            Envelope shown = wide.intersection(thing.plan());
            if (!shown.isNull()) {
                west = Math.min(west, shown.getMinX());
                east = Math.max(east, shown.getMaxX());
                south = Math.min(south, shown.getMinY());
                north = Math.max(north, shown.getMaxY());
                top = Math.max(top, Math.min(thing.topZM(), structureTop + beyond));
            }
        }
        double scale = Math.min((Style.WIDTH_PX - LEFT_PX - RIGHT_PX) / (east - west), MOST_PLAN_PX / (north - south));
        return new Frame(west, south, east, north, low, top + MARGIN_M, structureTop + MARGIN_M, scale);
    }

    /** The plan and the upper end of something beside the enclosure. */
    private record Beside(Envelope plan, double topZM) {}

    /** What is shown as far as it stands near: a tower far away must not make the enclosure small. */
    private static List<Beside> beside(Shading shading) {
        List<Beside> things = new ArrayList<>();
        for (Building building : shading.buildings()) {
            things.add(new Beside(building.footprint().toPolygon().getEnvelopeInternal(), building.topZM()));
        }
        for (Crown crown : shading.neighbours()) {
            Envelope plan =
                    new Envelope(new Coordinate(crown.foot().xM(), crown.foot().yM()));
            plan.expandBy(crown.radiusM());
            things.add(new Beside(plan, crown.topZM()));
        }
        return things;
    }

    /** What the plan must hold: the ground, what bounds it and what covers it. */
    private static List<Point> around(Enclosure enclosure) {
        List<Point> points = new ArrayList<>();
        enclosure.ground().outline().corners().forEach(corner -> points.add(corner.atHeight(0)));
        for (Barrier barrier : enclosure.bounds().barriers()) {
            double footZM = Math.max(barrier.baseZM(), Math.min(0, barrier.topZM()) - BELOW_M);
            for (Corner corner : barrier.footprint().corners()) {
                points.add(corner.atHeight(footZM));
                points.add(corner.atHeight(barrier.topZM()));
            }
        }
        for (HotWire wire : enclosure.bounds().hotWires()) {
            if (wire instanceof HotWire.Strand strand) {
                points.addAll(strand.line().points());
            } else if (wire instanceof HotWire.Planting planting) {
                planting.footprint().corners().forEach(corner -> points.add(corner.atHeight(planting.topZM())));
            }
        }
        enclosure.panels().forEach(panel -> points.addAll(panel.corners()));
        enclosure
                .shading()
                .covers()
                .forEach(cover -> points.addAll(cover.facet().corners()));
        return points;
    }

    /** What else the side view must hold. */
    private static List<Point> within(Enclosure enclosure) {
        List<Point> points = new ArrayList<>();
        enclosure.supports().forEach(support -> points.addAll(support.axis().points()));
        enclosure.platforms().forEach(platform -> points.add(platform.centre()));
        enclosure.crowns().forEach(crown -> points.add(crown.foot().atHeight(crown.topZM())));
        for (Triangle triangle : enclosure.ground().terrain().triangles()) {
            points.addAll(List.of(triangle.a(), triangle.b(), triangle.c()));
        }
        return points;
    }

    double xM(double xPx) {
        return westM + (xPx - LEFT_PX) / pxPerM;
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

    /** Where the side view ends. */
    double bottomPx() {
        return sideYPx(lowM);
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

    /** All that the plan shows. */
    Rectangle2D planArea() {
        double top = planYPx(northM);
        return new Rectangle2D.Double(LEFT_PX, top, (eastM - westM) * pxPerM, planYPx(southM) - top);
    }

    /** All that the side view shows. */
    Rectangle2D sideArea() {
        double top = sideYPx(topM);
        return new Rectangle2D.Double(LEFT_PX, top, (eastM - westM) * pxPerM, bottomPx() - top);
    }

    Shape inPlan(Crown crown) {
        Point2D middle = inPlan(crown.foot());
        double r = crown.radiusM() * pxPerM;
        return new Ellipse2D.Double(middle.getX() - r, middle.getY() - r, 2 * r, 2 * r);
    }

    Shape fromSide(Crown crown) {
        double r = crown.radiusM() * pxPerM;
        double top = sideYPx(crown.topZM());
        return new Rectangle2D.Double(xPx(crown.foot().xM()) - r, top, 2 * r, sideYPx(crown.baseZM()) - top);
    }

    Path2D inPlan(Outline outline) {
        return closed(outline.corners().stream()
                .map(corner -> inPlan(corner.atHeight(0)))
                .toList());
    }

    static Path2D closed(List<Point2D> corners) {
        Path2D path = open(corners);
        path.closePath();
        return path;
    }

    static Path2D open(List<Point2D> points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).getX(), points.get(0).getY());
        for (Point2D point : points.subList(1, points.size())) {
            path.lineTo(point.getX(), point.getY());
        }
        return path;
    }
}
