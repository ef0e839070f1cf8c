package limbway.reports.chart;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;

/** Signs of supports that are more than a line, and of decks that are not rigid. */
final class SupportSign {

    private static final double HALF_LADDER_PX = 3.5;
    private static final double RUNG_PX = 4.5;

    /** How far the sides of a hammock are drawn in, and its middle down, as a share of its size. */
    private static final double SAG = 0.16;

    private SupportSign() {}

    /** A line that grows thinner. */
    static void tapering(Graphics2D g, Line2D line, double startPx, double endPx) {
        double length = line.getP1().distance(line.getP2());
        if (length < startPx) {
            g.setStroke(Style.line(startPx));
            g.draw(line);
            return;
        }
        double acrossX = (line.getY1() - line.getY2()) / length / 2;
        double acrossY = (line.getX2() - line.getX1()) / length / 2;
        g.fill(Frame.closed(List.of(
                new Point2D.Double(line.getX1() + startPx * acrossX, line.getY1() + startPx * acrossY),
                new Point2D.Double(line.getX2() + endPx * acrossX, line.getY2() + endPx * acrossY),
                new Point2D.Double(line.getX2() - endPx * acrossX, line.getY2() - endPx * acrossY),
                new Point2D.Double(line.getX1() - startPx * acrossX, line.getY1() - startPx * acrossY))));
    }

    /** Two rails with rungs; of one seen from its end, three rungs. */
    static void ladder(Graphics2D g, Line2D line) {
        double length = line.getP1().distance(line.getP2());
        boolean endOn = length < 2 * RUNG_PX;
        double alongX = endOn ? 0 : (line.getX2() - line.getX1()) / length;
        double alongY = endOn ? 1 : (line.getY2() - line.getY1()) / length;
        double shown = endOn ? 2 * RUNG_PX : length;
        double x0 = line.getX1();
        double y0 = endOn ? line.getY1() - RUNG_PX : line.getY1();
        double acrossX = -alongY * HALF_LADDER_PX;
        double acrossY = alongX * HALF_LADDER_PX;
        g.setStroke(Style.line(1.4));
        for (int side : new int[] {-1, 1}) {
            double x = x0 + side * acrossX;
            double y = y0 + side * acrossY;
            g.draw(new Line2D.Double(x, y, x + shown * alongX, y + shown * alongY));
        }
        g.setStroke(Style.line(1));
        for (double at = RUNG_PX / 2; at < shown; at += RUNG_PX) {
            double x = x0 + at * alongX;
            double y = y0 + at * alongY;
            g.draw(new Line2D.Double(x - acrossX, y - acrossY, x + acrossX, y + acrossY));
        }
    }

    /** From above: corners tied, sides drawn in. */
    static Path2D hammock(List<Point2D> corners) {
        double middleX = corners.stream().mapToDouble(Point2D::getX).average().orElse(0);
        double middleY = corners.stream().mapToDouble(Point2D::getY).average().orElse(0);
        Path2D path = new Path2D.Double();
        Point2D first = corners.get(0);
        path.moveTo(first.getX(), first.getY());
        for (int i = 0; i < corners.size(); i++) {
            Point2D a = corners.get(i);
            Point2D b = corners.get((i + 1) % corners.size());
            double x = (a.getX() + b.getX()) / 2;
            double y = (a.getY() + b.getY()) / 2;
            path.quadTo(x + 2 * SAG * (middleX - x), y + 2 * SAG * (middleY - y), b.getX(), b.getY());
        }
        path.closePath();
        return path;
    }

    /** From the side: hanging between its ends. */
    static Path2D hanging(double westPx, double eastPx, double yPx) {
        Path2D path = new Path2D.Double();
        path.moveTo(westPx, yPx);
        path.quadTo((westPx + eastPx) / 2, yPx + 2 * SAG * (eastPx - westPx), eastPx, yPx);
        path.quadTo((westPx + eastPx) / 2, yPx + 2 * SAG * (eastPx - westPx) + 5, westPx, yPx);
        path.closePath();
        return path;
    }
}
