package limbway.reports.chart;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** A door: from above a gap with its leaf and the way that the leaf turns, from the side a pane marked with a wedge. */
final class DoorSign {

    private static final double NARROWEST_PX = 5;

    private DoorSign() {}

    static void plan(Graphics2D g, Line2D sill, Shape gap) {
        g.setColor(Style.PAPER);
        g.fill(gap);
        g.setStroke(Style.line(2.8));
        g.draw(gap);
        Point2D hinge = sill.getP1();
        double width = hinge.distance(sill.getP2());
        double towards = StrictMath.atan2(sill.getY2() - sill.getY1(), sill.getX2() - sill.getX1());
        double leaf = towards - Math.PI / 2;
        g.setColor(Style.INK);
        g.setStroke(Style.line(1.4));
        g.draw(new Line2D.Double(
                hinge.getX(),
                hinge.getY(),
                hinge.getX() + width * StrictMath.cos(leaf),
                hinge.getY() + width * StrictMath.sin(leaf)));
        g.setStroke(Style.line(0.8));
        g.draw(new Arc2D.Double(
                hinge.getX() - width,
                hinge.getY() - width,
                2 * width,
                2 * width,
                -StrictMath.toDegrees(towards),
                90,
                Arc2D.OPEN));
    }

    static void side(Graphics2D g, Rectangle2D seen) {
        Rectangle2D pane = seen.getWidth() >= NARROWEST_PX
                ? seen
                : new Rectangle2D.Double(
                        seen.getCenterX() - NARROWEST_PX / 2, seen.getMinY(), NARROWEST_PX, seen.getHeight());
        g.setColor(Style.PAPER);
        g.fill(pane);
        g.setColor(Style.INK);
        g.setStroke(Style.line(1));
        g.draw(pane);
        Path2D wedge = new Path2D.Double();
        wedge.moveTo(pane.getMinX(), pane.getMinY());
        wedge.lineTo(pane.getMaxX(), pane.getCenterY());
        wedge.lineTo(pane.getMinX(), pane.getMaxY());
        g.setStroke(Style.line(0.7));
        g.draw(wedge);
    }
}
