package limbway.reports.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
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
    private static final Color HALO = new Color(255, 255, 255, 190);
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
        drawGround();
        drawStanding(true);
    }

    /** The ground from above, with what closes parts of it. */
    void drawGround() {
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
    }

    /**
     * All that stands on the ground, from above.
     *
     * @param opaque whether decks and crowns are filled; else what was drawn below them shows
     */
    void drawStanding(boolean opaque) {
        if (!opaque) {
            for (Obstacle obstacle : enclosure.ground().obstacles()) {
                halo(frame.inPlan(obstacle.outline()), 1);
                g.setColor(Style.FAINT);
                g.setStroke(Style.line(1));
                g.draw(frame.inPlan(obstacle.outline()));
            }
        }
        g.setColor(Style.INK);
        g.setStroke(Style.line(1.5));
        g.draw(frame.inPlan(enclosure.ground().outline()));
        surroundings.drawBesideInPlan();
        surroundings.drawStopsInPlan();
        for (Crown crown : enclosure.crowns()) {
            drawCrown(frame.inPlan(crown), opaque);
        }
        surroundings.drawPanels(true);
        surroundings.drawDoorsInPlan();
        for (Platform platform : enclosure.platforms()) {
            drawDeck(isHammock(platform) ? hammock(platform) : frame.inPlan(platform.outline()), platform.zM(), opaque);
        }
        enclosure.supports().forEach(support -> drawSupport(support, true, opaque));
        surroundings.drawCovers(true);
    }

    /** What lies behind all else in the side view; lines of height are drawn over it. */
    void drawBackdrop() {
        Relief relief = new Relief(enclosure.ground());
        if (relief.isHilly()) {
            relief.drawSide(g, frame);
        }
        surroundings.drawBesideFromSide();
        surroundings.drawStopsFromSide();
        surroundings.drawDoorsFromSide();
    }

    void drawSide() {
        for (Crown crown : enclosure.crowns()) {
            drawCrown(frame.fromSide(crown), true);
        }
        surroundings.drawPanels(false);
        enclosure.supports().forEach(support -> drawSupport(support, false, true));
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
                    platform.zM(),
                    true);
        }
        surroundings.drawCovers(false);
    }

    private static boolean isHammock(Platform platform) {
        return platform.kind() == PlatformKind.HAMMOCK;
    }

    private Path2D hammock(Platform platform) {
        return SupportSign.hammock(platform.outline().corners().stream()
                .map(corner -> frame.inPlan(corner.atHeight(platform.zM())))
                .toList());
    }

    private void drawSupport(Support support, boolean plan, boolean opaque) {
        double alongM = 0;
        for (Segment piece : support.axis().pieces()) {
            Line2D line = plan ? frame.inPlan(piece) : frame.fromSide(piece);
            double startPx = widthPx(support.diameterAtM(alongM));
            alongM += piece.lengthM();
            double endPx = widthPx(support.diameterAtM(alongM));
            if (!opaque) {
                halo(line, Math.max(startPx, endPx));
            }
            g.setColor(grey((piece.a().zM() + piece.b().zM()) / 2, frame.structureTopM()));
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

    private void drawDeck(Shape shape, double zM, boolean filled) {
        if (filled) {
            g.setColor(Style.PAPER);
            g.fill(shape);
        } else {
            halo(shape, 1.8);
        }
        g.setColor(grey(zM, frame.structureTopM()));
        g.setStroke(Style.line(1.8));
        g.draw(shape);
    }

    private void drawCrown(Shape shape, boolean filled) {
        if (filled) {
            g.setColor(CROWN_FILL);
            g.fill(shape);
        } else {
            halo(shape, 0.8);
        }
        g.setColor(Style.FAINT);
        g.setStroke(Style.dashed(0.8));
        g.draw(shape);
    }

    /** Sets a line off from what it lies on, where that may be dark. */
    private void halo(Shape line, double widthPx) {
        g.setColor(HALO);
        g.setStroke(Style.line(widthPx + 2.4));
        g.draw(line);
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
