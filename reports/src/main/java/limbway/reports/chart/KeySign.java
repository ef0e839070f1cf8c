package limbway.reports.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.CoverKind;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.HotWire;
import limbway.model.enclosure.PanelKind;
import limbway.model.enclosure.PlatformKind;
import limbway.model.enclosure.SupportKind;
import limbway.reports.words.Figures;

/**
 * What one sign of an enclosure drawing means.
 *
 * @param words its meaning
 * @param sample draws the sign into a rectangle of {@link #WIDTH_PX} by 16 pixels
 */
record KeySign(String words, Painter sample) {

    static final double WIDTH_PX = 34;
    static final int ROW_PX = 26;
    static final int COLUMNS = 4;

    /** The signs that occur in a drawing, in a fixed order. */
    static List<KeySign> of(Enclosure enclosure) {
        List<KeySign> signs = new ArrayList<>();
        if (enclosure.supports().stream().anyMatch(support -> support.kind() == SupportKind.BRANCH)) {
            signs.add(new KeySign("branch", KeySign::branch));
        }
        if (enclosure.supports().stream().anyMatch(support -> support.kind() == SupportKind.LADDER)) {
            signs.add(new KeySign("ladder", KeySign::ladder));
        }
        if (enclosure.platforms().stream().anyMatch(platform -> platform.kind() == PlatformKind.HAMMOCK)) {
            signs.add(new KeySign("hammock", KeySign::hammock));
        }
        for (PanelKind kind : PanelKind.values()) {
            if (enclosure.panels().stream().anyMatch(panel -> panel.kind() == kind)) {
                signs.add(new KeySign(kind.word(), (g, area) -> PanelSign.draw(g, corners(area), kind)));
            }
        }
        for (BarrierKind kind : BarrierKind.values()) {
            if (enclosure.bounds().barriers().stream().anyMatch(barrier -> barrier.kind() == kind)) {
                signs.add(new KeySign(kind.word(), (g, area) -> barrier(g, area, kind)));
            }
        }
        if (!enclosure.bounds().doors().isEmpty()) {
            signs.add(new KeySign("door", KeySign::door));
        }
        if (enclosure.bounds().hotWires().stream().anyMatch(HotWire.Strand.class::isInstance)) {
            signs.add(new KeySign("live wire", KeySign::strand));
        }
        if (enclosure.bounds().hotWires().stream().anyMatch(HotWire.Planting.class::isInstance)) {
            signs.add(new KeySign("guarded planting", (g, area) -> WireSign.planting(g, inner(area, 4), 4)));
        }
        for (CoverKind kind : CoverKind.values()) {
            if (enclosure.shading().covers().stream().anyMatch(cover -> cover.kind() == kind)) {
                signs.add(new KeySign(kind.word(), (g, area) -> ShadingSign.cover(g, corners(area), kind)));
            }
        }
        if (!enclosure.shading().buildings().isEmpty()) {
            signs.add(new KeySign("building", ShadingSign::building));
        }
        if (!enclosure.shading().neighbours().isEmpty()) {
            signs.add(new KeySign("tree beside", KeySign::neighbour));
        }
        Relief relief = new Relief(enclosure.ground());
        if (relief.isHilly()) {
            signs.add(new KeySign("height by " + Figures.decimals(relief.stepM(), 2) + " m", Relief::drawSample));
        }
        return signs;
    }

    /** Rows that signs take up in a key. */
    static int rows(List<KeySign> signs) {
        return (signs.size() + COLUMNS - 1) / COLUMNS;
    }

    private static void branch(Graphics2D g, Rectangle2D area) {
        g.setColor(Style.FAINT);
        SupportSign.tapering(g, middle(area), 6, 1.4);
    }

    private static void ladder(Graphics2D g, Rectangle2D area) {
        g.setColor(Style.FAINT);
        SupportSign.ladder(g, middle(area));
    }

    private static void hammock(Graphics2D g, Rectangle2D area) {
        g.setColor(Style.FAINT);
        g.setStroke(Style.line(1.8));
        g.draw(SupportSign.hammock(corners(inner(area, 1))));
    }

    private static void barrier(Graphics2D g, Rectangle2D area, BarrierKind kind) {
        BarrierSign.plan(g, kind == BarrierKind.WATER ? area : inner(area, 5.5), kind);
    }

    private static void door(Graphics2D g, Rectangle2D area) {
        double low = area.getMaxY() - 2;
        g.setColor(Style.INK);
        g.setStroke(Style.line(2));
        g.draw(new Line2D.Double(area.getMinX(), low, area.getMaxX(), low));
        Line2D sill = new Line2D.Double(area.getMinX() + 10, low, area.getMaxX() - 10, low);
        BasicStroke gap = new BasicStroke(4, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
        DoorSign.plan(g, sill, gap.createStrokedShape(sill));
    }

    private static void strand(Graphics2D g, Rectangle2D area) {
        WireSign.strand(g, middle(inner(area, 6)), 6);
    }

    private static void neighbour(Graphics2D g, Rectangle2D area) {
        ShadingSign.neighbour(
                g,
                new Ellipse2D.Double(
                        area.getMinX() + 4, area.getMinY() - 3, area.getWidth() - 8, area.getHeight() + 6));
    }

    private static Line2D middle(Rectangle2D area) {
        return new Line2D.Double(area.getMinX(), area.getCenterY(), area.getMaxX(), area.getCenterY());
    }

    private static Rectangle2D inner(Rectangle2D area, double px) {
        return new Rectangle2D.Double(
                area.getX() + px, area.getY() + px, area.getWidth() - 2 * px, area.getHeight() - 2 * px);
    }

    private static List<Point2D> corners(Rectangle2D area) {
        return List.of(
                new Point2D.Double(area.getMinX(), area.getMinY()),
                new Point2D.Double(area.getMaxX(), area.getMinY()),
                new Point2D.Double(area.getMaxX(), area.getMaxY()),
                new Point2D.Double(area.getMinX(), area.getMaxY()));
    }
}
