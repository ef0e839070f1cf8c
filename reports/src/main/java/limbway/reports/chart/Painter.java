package limbway.reports.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/** Draws something into a rectangle. */
@FunctionalInterface
public interface Painter {

    /**
     * Draws.
     *
     * @param g where to draw
     * @param area the rectangle to fill, in pixels of the picture
     */
    void paint(Graphics2D g, Rectangle2D area);
}
