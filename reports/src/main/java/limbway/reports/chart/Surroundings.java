package limbway.reports.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Building;
import limbway.model.enclosure.Cover;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Door;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.HotWire;
import limbway.model.enclosure.Panel;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;

/** Draws what bounds an enclosure, panels, barriers, live wire and doors, and what stands there for its shade alone. */
final class Surroundings {

    /** Breadth of the gap of a door in a panel [px]. */
    private static final double GAP_PX = 9;

    /** A door in a barrier opens all of it, and no barrier is taken to be thicker than this [m]. */
    private static final double THICKEST_M = 3;

    private final Graphics2D g;
    private final Enclosure enclosure;
    private final Frame frame;

    Surroundings(Graphics2D g, Enclosure enclosure, Frame frame) {
        this.g = g;
        this.enclosure = enclosure;
        this.frame = frame;
    }

    /** Barriers and live wire from above, which lie under what animals move on. */
    void drawStopsInPlan() {
        // water first: it lies lowest
        for (boolean water : new boolean[] {true, false}) {
            for (Barrier barrier : enclosure.bounds().barriers()) {
                if ((barrier.kind() == BarrierKind.WATER) == water) {
                    BarrierSign.plan(g, frame.inPlan(barrier.footprint()), barrier.kind());
                }
            }
        }
        for (HotWire wire : enclosure.bounds().hotWires()) {
            double clearancePx = wire.clearanceM() * frame.pxPerM();
            if (wire instanceof HotWire.Planting planting) {
                WireSign.planting(g, frame.inPlan(planting.footprint()), clearancePx);
            } else if (wire instanceof HotWire.Strand strand) {
                WireSign.strand(g, line(strand.line().points(), true), clearancePx);
            }
        }
    }

    /** Barriers and live wire from the south, all behind what animals move on. */
    void drawStopsFromSide() {
        for (Barrier barrier : enclosure.bounds().barriers()) {
            BarrierSign.side(g, front(barrier.footprint(), barrier.baseZM(), barrier.topZM()), barrier.kind());
        }
        for (HotWire wire : enclosure.bounds().hotWires()) {
            double clearancePx = wire.clearanceM() * frame.pxPerM();
            if (wire instanceof HotWire.Planting planting) {
                Rectangle2D front = front(planting.footprint(), planting.baseZM(), planting.topZM());
                WireSign.planting(g, front, clearancePx);
            } else if (wire instanceof HotWire.Strand strand) {
                WireSign.strand(g, line(strand.line().points(), false), clearancePx);
            }
        }
    }

    void drawPanels(boolean plan) {
        for (Panel panel : enclosure.panels()) {
            PanelSign.draw(g, project(panel.corners(), plan), panel.kind());
        }
    }

    void drawDoorsInPlan() {
        for (Door door : enclosure.bounds().doors()) {
            DoorSign.plan(g, frame.inPlan(door.sill()), gap(door));
        }
    }

    void drawDoorsFromSide() {
        for (Door door : enclosure.bounds().doors()) {
            Line2D sill = frame.fromSide(door.sill());
            double height = door.heightM() * frame.pxPerM();
            DoorSign.side(
                    g,
                    new Rectangle2D.Double(
                            Math.min(sill.getX1(), sill.getX2()),
                            Math.min(sill.getY1(), sill.getY2()) - height,
                            Math.abs(sill.getX2() - sill.getX1()),
                            height));
        }
    }

    /** Buildings and trees beside the enclosure from above; they lie under what animals move on. */
    void drawBesideInPlan() {
        Shape clip = g.getClip();
        g.clip(frame.planArea());
        for (Building building : enclosure.shading().buildings()) {
            ShadingSign.building(g, frame.inPlan(building.footprint()));
        }
        for (Crown crown : enclosure.shading().neighbours()) {
            ShadingSign.neighbour(g, frame.inPlan(crown));
        }
        g.setClip(clip);
    }

    /** Buildings and trees beside the enclosure from the south, all behind what animals move on. */
    void drawBesideFromSide() {
        Shape clip = g.getClip();
        g.clip(frame.sideArea());
        for (Building building : enclosure.shading().buildings()) {
            ShadingSign.buildingBehind(g, front(building.footprint(), building.baseZM(), building.topZM()));
        }
        for (Crown crown : enclosure.shading().neighbours()) {
            ShadingSign.neighbour(g, frame.fromSide(crown));
        }
        g.setClip(clip);
    }

    /** Roofs and sails, over all else. */
    void drawCovers(boolean plan) {
        for (Cover cover : enclosure.shading().covers()) {
            ShadingSign.cover(g, project(cover.facet().corners(), plan), cover.kind());
        }
    }

    private List<Point2D> project(List<Point> points, boolean plan) {
        return points.stream()
                .map(point -> plan ? frame.inPlan(point) : frame.fromSide(point))
                .toList();
    }

    private Path2D line(List<Point> points, boolean plan) {
        return Frame.open(project(points, plan));
    }

    /** All of the barrier that a door opens, or a stretch of the line that a panel is drawn as. */
    private Shape gap(Door door) {
        Line2D sill = frame.inPlan(door.sill());
        Area gap = new Area(butt(GAP_PX).createStrokedShape(sill));
        for (Barrier barrier : enclosure.bounds().barriers()) {
            if (barrier.id().equals(door.in())) {
                Area through = new Area(butt(2 * THICKEST_M * frame.pxPerM()).createStrokedShape(sill));
                through.intersect(new Area(frame.inPlan(barrier.footprint())));
                gap.add(through);
            }
        }
        return gap;
    }

    private static BasicStroke butt(double width) {
        return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
    }

    private Rectangle2D front(Outline footprint, double baseZM, double topZM) {
        Rectangle2D plan = frame.inPlan(footprint).getBounds2D();
        double top = frame.sideYPx(topZM);
        double base = Math.min(frame.bottomPx(), frame.sideYPx(baseZM));
        return new Rectangle2D.Double(plan.getMinX(), top, plan.getWidth(), base - top);
    }
}
