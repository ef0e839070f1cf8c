package limbway.reports.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;

/** Live wire: the volume that it keeps free in a dashed outline with a light fill, the strand or the planting in it. */
final class WireSign {

    private static final Color ZONE = new Color(0xB0, 0x4A, 0x3A, 34);
    private static final Color STRAND = new Color(0x8A, 0x2F, 0x24);
    private static final Color LEAVES = new Color(0x5F, 0x74, 0x58);
    private static final double LEAF_PX = 6;

    private WireSign() {}

    static void strand(Graphics2D g, Shape line, double clearancePx) {
        zone(g, new Area(around(line, clearancePx)));
        g.setColor(STRAND);
        g.setStroke(new BasicStroke(
                1.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {9, 2.5f, 2, 2.5f}, 0));
        g.draw(line);
    }

    static void planting(Graphics2D g, Shape area, double clearancePx) {
        Area zone = new Area(area);
        zone.add(new Area(around(area, clearancePx)));
        zone(g, zone);
        Shape clip = g.getClip();
        g.clip(area);
        g.setColor(LEAVES);
        Rectangle2D box = area.getBounds2D();
        int row = 0;
        for (double y = box.getMinY() + 2; y < box.getMaxY(); y += LEAF_PX) {
            for (double x = box.getMinX() + (row % 2) * LEAF_PX / 2; x < box.getMaxX(); x += LEAF_PX) {
                g.fill(new Ellipse2D.Double(x, y, 2, 2));
            }
            row++;
        }
        g.setClip(clip);
        g.setStroke(Style.line(0.8));
        g.draw(area);
    }

    /** All that lies nearer to a line than the clearance. */
    private static Shape around(Shape line, double clearancePx) {
        return Style.line(2 * clearancePx).createStrokedShape(line);
    }

    private static void zone(Graphics2D g, Area zone) {
        g.setColor(ZONE);
        g.fill(zone);
        g.setColor(STRAND);
        g.setStroke(new BasicStroke(0.9f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {4, 3}, 0));
        g.draw(zone);
    }
}
