package limbway.reports.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

import limbway.model.enclosure.CoverKind;

/** What stands for its shade alone: hatched roofs, dotted sails, solid buildings, crowns of trees beside the enclosure. */
final class ShadingSign {

    private static final Color LINE = new Color(0x4A, 0x3F, 0x55);
    private static final Color HATCH = new Color(0x4A, 0x3F, 0x55, 120);
    private static final Color VEIL = new Color(0x4A, 0x3F, 0x55, 22);
    private static final Color BLOCK = new Color(0xA3, 0x9F, 0x98);
    private static final Color BLOCK_BEHIND = new Color(0xA3, 0x9F, 0x98, 70);
    private static final Color LEAVES = new Color(110, 130, 105, 22);
    private static final double HATCH_PX = 10;
    private static final double DOT_PX = 6;
    private static final double EDGE_ON_PX = 3;

    private ShadingSign() {}

    static void cover(Graphics2D g, List<Point2D> corners, CoverKind kind) {
        Shape outline = Frame.closed(corners);
        Rectangle2D box = outline.getBounds2D();
        boolean edgeOn = box.getHeight() < EDGE_ON_PX || box.getWidth() < EDGE_ON_PX;
        if (!edgeOn) {
            inside(g, outline, kind);
        }
        g.setColor(LINE);
        g.setStroke(kind == CoverKind.ROOF ? Style.line(edgeOn ? 3.2 : 1.8) : Style.dashed(edgeOn ? 2.4 : 1.8));
        g.draw(outline);
    }

    private static void inside(Graphics2D g, Shape outline, CoverKind kind) {
        g.setColor(VEIL);
        g.fill(outline);
        Shape clip = g.getClip();
        g.clip(outline);
        g.setColor(HATCH);
        g.setStroke(Style.line(0.8));
        Rectangle2D box = outline.getBounds2D();
        if (kind == CoverKind.ROOF) {
            for (double x = box.getMinX() - box.getHeight(); x < box.getMaxX(); x += HATCH_PX) {
                g.draw(new Line2D.Double(x, box.getMinY(), x + box.getHeight(), box.getMaxY()));
            }
        } else {
            int row = 0;
            for (double y = box.getMinY() + DOT_PX / 2; y < box.getMaxY(); y += DOT_PX) {
                for (double x = box.getMinX() + (row % 2) * DOT_PX / 2; x < box.getMaxX(); x += DOT_PX) {
                    g.fill(new Ellipse2D.Double(x, y, 1.6, 1.6));
                }
                row++;
            }
        }
        g.setClip(clip);
    }

    static void building(Graphics2D g, Shape footprint) {
        g.setColor(BLOCK);
        g.fill(footprint);
        g.setColor(LINE);
        g.setStroke(Style.line(1.6));
        g.draw(footprint);
    }

    /** As looked at; what stands before shows through. */
    static void buildingBehind(Graphics2D g, Shape front) {
        g.setColor(BLOCK_BEHIND);
        g.fill(front);
        g.setColor(LINE);
        g.setStroke(Style.line(0.9));
        g.draw(front);
    }

    static void neighbour(Graphics2D g, Shape crown) {
        g.setColor(LEAVES);
        g.fill(crown);
        g.setColor(LINE);
        g.setStroke(
                new BasicStroke(1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {7, 3, 1.5f, 3}, 0));
        g.draw(crown);
    }
}
