package limbway.reports.chart;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Locale;

import limbway.model.enclosure.ResourceKind;

/** The sign of a resource: a shape of its own for each kind, with the first letter of the kind in it. */
final class ResourceMark {

    static final double RADIUS_PX = 8;

    private ResourceMark() {}

    static void draw(Graphics2D g, ResourceKind kind, Point2D at) {
        Shape shape = shape(kind, at.getX(), at.getY());
        g.setColor(Style.PAPER);
        g.fill(shape);
        g.setColor(Style.INK);
        g.setStroke(Style.line(1.6));
        g.draw(shape);
        g.setFont(Style.strongType(10));
        String letter = letter(kind);
        double width = g.getFontMetrics().stringWidth(letter);
        g.drawString(letter, (float) (at.getX() - width / 2), (float) (at.getY() + 3.7));
    }

    static String letter(ResourceKind kind) {
        return kind.word().substring(0, 1).toUpperCase(Locale.ROOT);
    }

    static Rectangle2D box(Point2D at) {
        return new Rectangle2D.Double(at.getX() - RADIUS_PX, at.getY() - RADIUS_PX, 2 * RADIUS_PX, 2 * RADIUS_PX);
    }

    private static Shape shape(ResourceKind kind, double x, double y) {
        double r = RADIUS_PX;
        return switch (kind) {
            case FOOD -> new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
            case NEST -> new Rectangle2D.Double(x - 0.9 * r, y - 0.9 * r, 1.8 * r, 1.8 * r);
            case WATER -> corners(x, y, 3, -90, 1.35 * r);
            case SHADE -> corners(x, y, 4, 0, 1.3 * r);
            case RETREAT -> corners(x, y, 6, 0, 1.1 * r);
        };
    }

    private static Shape corners(double x, double y, int n, double startDeg, double r) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < n; i++) {
            double angle = StrictMath.toRadians(startDeg + 360.0 * i / n);
            double px = x + r * StrictMath.cos(angle);
            double py = y + r * StrictMath.sin(angle);
            if (i == 0) {
                path.moveTo(px, py);
            } else {
                path.lineTo(px, py);
            }
        }
        path.closePath();
        return path;
    }
}
