package limbway.reports.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Obstacle;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Segment;

/** Draws what stands in an enclosure, in grey: lines by thickness, lighter where higher. */
final class Structure {

    private static final Color GROUND_FILL = new Color(0xF5, 0xF4, 0xEE);
    private static final Color CLOSED_FILL = new Color(0xD9, 0xD9, 0xD9);
    private static final Color CROWN_FILL = new Color(120, 140, 120, 28);
    private static final int DARKEST = 0x40;
    private static final int LIGHTEST = 0xB8;

    private final Graphics2D g;
    private final Enclosure enclosure;
    private final Frame frame;

    Structure(Graphics2D g, Enclosure enclosure, Frame frame) {
        this.g = g;
        this.enclosure = enclosure;
        this.frame = frame;
    }

    static Color grey(double zM, double topM) {
        int level = (int) Math.round(DARKEST + (LIGHTEST - DARKEST) * Math.max(0, Math.min(1, zM / topM)));
        return new Color(level, level, level);
    }

    void drawPlan() {
        g.setColor(GROUND_FILL);
        Shape outline = frame.inPlan(enclosure.ground().outline());
        g.fill(outline);
        for (Obstacle obstacle : enclosure.ground().obstacles()) {
            drawObstacle(frame.inPlan(obstacle.outline()));
        }
        g.setColor(Style.INK);
        g.setStroke(Style.line(1.5));
        g.draw(outline);
        for (Crown crown : enclosure.crowns()) {
            Point2D middle = frame.inPlan(crown.foot());
            double r = crown.radiusM() * frame.pxPerM();
            drawCrown(new Ellipse2D.Double(middle.getX() - r, middle.getY() - r, 2 * r, 2 * r));
        }
        for (Platform platform : enclosure.platforms()) {
            drawDeck(frame.inPlan(platform.outline()), platform.zM());
        }
        for (Support support : enclosure.supports()) {
            for (Segment piece : support.axis().pieces()) {
                setStroke(support, piece);
                g.draw(frame.inPlan(piece));
            }
        }
    }

    void drawSide() {
        for (Crown crown : enclosure.crowns()) {
            double r = crown.radiusM() * frame.pxPerM();
            double top = frame.sideYPx(crown.topZM());
            double x = frame.xPx(crown.foot().xM());
            drawCrown(new Rectangle2D.Double(x - r, top, 2 * r, frame.sideYPx(crown.baseZM()) - top));
        }
        for (Support support : enclosure.supports()) {
            for (Segment piece : support.axis().pieces()) {
                setStroke(support, piece);
                g.draw(frame.fromSide(piece));
            }
        }
        for (Platform platform : enclosure.platforms()) {
            double west = Double.POSITIVE_INFINITY;
            double east = Double.NEGATIVE_INFINITY;
            for (Corner corner : platform.outline().corners()) {
                west = Math.min(west, corner.xM());
                east = Math.max(east, corner.xM());
            }
            double y = frame.sideYPx(platform.zM());
            drawDeck(new Rectangle2D.Double(frame.xPx(west), y, (east - west) * frame.pxPerM(), 3), platform.zM());
        }
    }

    private void setStroke(Support support, Segment piece) {
        double middleZM = (piece.a().zM() + piece.b().zM()) / 2;
        g.setColor(grey(middleZM, frame.topM()));
        g.setStroke(Style.line(Math.max(1.4, Math.min(7, 20 * support.diameterM()))));
    }

    private void drawDeck(Shape shape, double zM) {
        g.setColor(Style.PAPER);
        g.fill(shape);
        g.setColor(grey(zM, frame.topM()));
        g.setStroke(Style.line(1.8));
        g.draw(shape);
    }

    private void drawCrown(Shape shape) {
        g.setColor(CROWN_FILL);
        g.fill(shape);
        g.setColor(Style.FAINT);
        g.setStroke(Style.dashed(0.8));
        g.draw(shape);
    }

    private void drawObstacle(Shape shape) {
        g.setColor(CLOSED_FILL);
        g.fill(shape);
        Shape clip = g.getClip();
        g.clip(shape);
        g.setColor(Style.FAINT);
        g.setStroke(Style.line(0.7));
        Rectangle2D box = shape.getBounds2D();
        for (double x = box.getMinX() - box.getHeight(); x < box.getMaxX(); x += 7) {
            g.draw(new Line2D.Double(x, box.getMaxY(), x + box.getHeight(), box.getMinY()));
        }
        g.setClip(clip);
        g.setStroke(Style.line(1));
        g.draw(shape);
    }
}
