package limbway.reports.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

import limbway.model.enclosure.BarrierKind;

/** A barrier: solid for a wall, a white core between two lines for glass, waves for water. */
final class BarrierSign {

    private static final Color WALL = new Color(0x7A, 0x78, 0x74);
    private static final Color WALL_BEHIND = new Color(0x7A, 0x78, 0x74, 40);
    private static final Color GLASS_BEHIND = new Color(0xC8, 0xD8, 0xDE, 60);
    private static final Color WATER = new Color(0xDC, 0xE7, 0xEC);
    private static final Color WAVE = new Color(0x8F, 0xA9, 0xB5);
    private static final double WAVE_PX = 9;
    private static final double GLINT_PX = 26;

    private BarrierSign() {}

    /** As cut through, from above. */
    static void plan(Graphics2D g, Shape footprint, BarrierKind kind) {
        switch (kind) {
            case WALL -> {
                g.setColor(WALL);
                g.fill(footprint);
                g.setStroke(Style.line(2));
                g.draw(footprint);
            }
            case GLASS -> {
                g.setColor(WALL);
                g.setStroke(Style.line(4.4));
                g.draw(footprint);
                g.setColor(Style.PAPER);
                g.fill(footprint);
                g.setStroke(Style.line(2.6));
                g.draw(footprint);
            }
            case WATER -> water(g, footprint);
        }
    }

    /** As looked at; what stands behind and before shows through. */
    static void side(Graphics2D g, Rectangle2D front, BarrierKind kind) {
        switch (kind) {
            case WALL -> {
                g.setColor(WALL_BEHIND);
                g.fill(front);
                g.setColor(WALL);
                g.setStroke(Style.line(0.9));
                g.draw(front);
            }
            case GLASS -> {
                g.setColor(GLASS_BEHIND);
                g.fill(front);
                glints(g, front);
                g.setColor(WALL);
                g.setStroke(Style.line(0.9));
                g.draw(front);
            }
            case WATER -> water(g, front);
        }
    }

    private static void water(Graphics2D g, Shape area) {
        g.setColor(WATER);
        g.fill(area);
        Shape clip = g.getClip();
        g.clip(area);
        g.setColor(WAVE);
        g.setStroke(Style.line(0.8));
        Rectangle2D box = area.getBounds2D();
        int row = 0;
        for (double y = box.getMinY() + 4; y < box.getMaxY(); y += WAVE_PX) {
            double start = box.getMinX() + (row++ % 2 == 0 ? 3 : 3 + WAVE_PX);
            for (double x = start; x < box.getMaxX(); x += 2 * WAVE_PX) {
                Path2D wave = new Path2D.Double();
                wave.moveTo(x, y);
                wave.quadTo(x + WAVE_PX / 4, y - 3, x + WAVE_PX / 2, y);
                wave.quadTo(x + 3 * WAVE_PX / 4, y + 3, x + WAVE_PX, y);
                g.draw(wave);
            }
        }
        g.setClip(clip);
        g.setStroke(Style.line(1));
        g.draw(area);
    }

    private static void glints(Graphics2D g, Rectangle2D front) {
        Shape clip = g.getClip();
        g.clip(front);
        g.setColor(WAVE);
        g.setStroke(Style.line(0.8));
        double middle = front.getCenterY();
        for (double x = front.getMinX() + GLINT_PX / 2; x < front.getMaxX(); x += GLINT_PX) {
            g.draw(new Line2D.Double(x - 5, middle + 7, x + 5, middle - 7));
            g.draw(new Line2D.Double(x + 1, middle + 5, x + 7, middle - 3));
        }
        g.setClip(clip);
    }
}
