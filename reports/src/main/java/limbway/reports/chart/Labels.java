package limbway.reports.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Writes names beside marks so that none covers a mark or another name. */
final class Labels {

    private static final double[][] DIRECTIONS = {{1, 0}, {-1, 0}, {0, -1}, {0, 1}, {1, -1}, {-1, -1}, {1, 1}, {-1, 1}};
    private static final double[] AWAY_PX = {0, 10, 22, 36, 52, 70};
    private static final double LEADER_FROM_PX = 22;

    private final Graphics2D g;
    private final Rectangle2D area;
    private final List<Rectangle2D> taken = new ArrayList<>();

    Labels(Graphics2D g, Rectangle2D area) {
        this.g = g;
        this.area = area;
    }

    void keepFree(Rectangle2D box) {
        taken.add(box);
    }

    /** Writes a name near a point; returns false if no place was free within {@code mostAwayPx}. */
    boolean write(String name, double xPx, double yPx, double markPx, Font font, double mostAwayPx) {
        g.setFont(font);
        double width = g.getFontMetrics().stringWidth(name) + 4;
        double height = g.getFontMetrics().getAscent() + 1;
        for (double away : AWAY_PX) {
            for (double[] direction : DIRECTIONS) {
                double reach = markPx + 3 + away;
                double left =
                        xPx + direction[0] * reach - (direction[0] < 0 ? width : direction[0] == 0 ? width / 2 : 0);
                double top =
                        yPx + direction[1] * reach - (direction[1] < 0 ? height : direction[1] == 0 ? height / 2 : 0);
                Rectangle2D box = new Rectangle2D.Double(left, top, width, height);
                if (away <= mostAwayPx && area.contains(box) && taken.stream().noneMatch(box::intersects)) {
                    draw(name, box, away, xPx, yPx);
                    return true;
                }
            }
        }
        return false;
    }

    private void draw(String name, Rectangle2D box, double away, double xPx, double yPx) {
        taken.add(box);
        if (away >= LEADER_FROM_PX) {
            g.setStroke(Style.line(0.8));
            g.draw(new Line2D.Double(xPx, yPx, box.getCenterX(), box.getCenterY()));
        }
        var ink = g.getColor();
        g.setColor(new Color(255, 255, 255, 190));
        g.fill(box);
        g.setColor(ink);
        g.drawString(name, (float) box.getX() + 2, (float) (box.getMaxY() - 3));
    }
}
