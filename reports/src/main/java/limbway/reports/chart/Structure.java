package limbway.reports.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Obstacle;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.PlatformKind;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
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
    private final Surroundings surroundings;

    Structure(Graphics2D g, Enclosure enclosure, Frame frame) {
        this.g = g;
        this.enclosure = enclosure;
        this.frame = frame;
        this.surroundings = new Surroundings(g, enclosure, frame);
    }

    static Color grey(double zM, double topM) {
        int level = (int) Math.round(DARKEST + (LIGHTEST - DARKEST) * Math.max(0, Math.min(1, zM / topM)));
        return new Color(level, level, level);
    }

    void drawPlan() {
        g.setColor(GROUND_FILL);
        Shape outline = frame.inPlan(enclosure.ground().outline());
        g.fill(outline);
        Relief relief = new Relief(enclosure.ground());
        if (relief.isHilly()) {
            relief.drawPlan(g, frame);
        }
        for (Obstacle obstacle : enclosure.ground().obstacles()) {
            drawObstacle(frame.inPlan(obstacle.outline()));
        }
        g.setColor(Style.INK);
        g.setStroke(Style.line(1.5));
        g.draw(outline);
        surroundings.drawStopsInPlan();
        for (Crown crown : enclosure.crowns()) {
            Point2D middle = frame.inPlan(crown.foot());
            double r = crown.radiusM() * frame.pxPerM();
            drawCrown(new Ellipse2D.Double(middle.getX() - r, middle.getY() - r, 2 * r, 2 * r));
        }
        surroundings.drawPanels(true);
        surroundings.drawDoorsInPlan();
        for (Platform platform : enclosure.platforms()) {
            drawDeck(isHammock(platform) ? hammock(platform) : frame.inPlan(platform.outline()), platform.zM());
        }
        enclosure.supports().forEach(support -> drawSupport(support, true));
    }

    /** What lies behind all else in the side view; lines of height are drawn over it. */
    void drawBackdrop() {
        Relief relief = new Relief(enclosure.ground());
        if (relief.isHilly()) {
            relief.drawSide(g, frame);
        }
        surroundings.drawStopsFromSide();
        surroundings.drawDoorsFromSide();
    }

    void drawSide() {
        for (Crown crown : enclosure.crowns()) {
            double r = crown.radiusM() * frame.pxPerM();
            double top = frame.sideYPx(crown.topZM());
            double x = frame.xPx(crown.foot().xM());
            drawCrown(new Rectangle2D.Double(x - r, top, 2 * r, frame.sideYPx(crown.baseZM()) - top));
        }
        surroundings.drawPanels(false);
        enclosure.supports().forEach(support -> drawSupport(support, false));
        for (Platform platform : enclosure.platforms()) {
            double west = Double.POSITIVE_INFINITY;
            double east = Double.NEGATIVE_INFINITY;
            for (Corner corner : platform.outline().corners()) {
                west = Math.min(west, corner.xM());
                east = Math.max(east, corner.xM());
            }
            double y = frame.sideYPx(platform.zM());
            Shape board = new Rectangle2D.Double(frame.xPx(west), y, (east - west) * frame.pxPerM(), 3);
            drawDeck(
                    isHammock(platform) ? SupportSign.hanging(frame.xPx(west), frame.xPx(east), y) : board,
                    platform.zM());
        }
    }

    private static boolean isHammock(Platform platform) {
        return platform.kind() == PlatformKind.HAMMOCK;
    }

    private Path2D hammock(Platform platform) {
        return SupportSign.hammock(platform.outline().corners().stream()
                .map(corner -> frame.inPlan(corner.atHeight(platform.zM())))
                .toList());
    }

    private void drawSupport(Support support, boolean plan) {
        double alongM = 0;
        for (Segment piece : support.axis().pieces()) {
            Line2D line = plan ? frame.inPlan(piece) : frame.fromSide(piece);
            g.setColor(grey((piece.a().zM() + piece.b().zM()) / 2, frame.topM()));
            double startPx = widthPx(support.diameterAtM(alongM));
            alongM += piece.lengthM();
            double endPx = widthPx(support.diameterAtM(alongM));
            if (support.kind() == SupportKind.LADDER) {
                SupportSign.ladder(g, line);
            } else if (startPx == endPx) {
                g.setStroke(Style.line(startPx));
                g.draw(line);
            } else {
                SupportSign.tapering(g, line, startPx, endPx);
            }
        }
    }

    private static double widthPx(double diameterM) {
        return Math.max(1.4, Math.min(7, 20 * diameterM));
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
