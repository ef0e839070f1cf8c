package limbway.reports.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

import limbway.model.enclosure.PanelKind;

/** A climbable panel: a fine grid, upright for mesh and slanting for a net; seen edge-on, a line with short strokes across. */
final class PanelSign {

    private static final Color FILL = new Color(0x55, 0x5F, 0x66, 20);
    private static final Color GRID = new Color(0x55, 0x5F, 0x66, 90);
    private static final Color EDGE = new Color(0x55, 0x5F, 0x66);
    private static final double MESH_PX = 5;
    private static final double NET_PX = 9;
    private static final double STROKE_PX = 3;

    /** Narrower than this a panel is seen edge-on. */
    private static final double EDGE_ON_PX = 3;

    private PanelSign() {}

    static void draw(Graphics2D g, List<Point2D> corners, PanelKind kind) {
        Line2D longest = longest(corners);
        if (widthAcross(corners, longest) < EDGE_ON_PX) {
            drawEdgeOn(g, longest, kind);
            return;
        }
        Path2D outline = Frame.closed(corners);
        g.setColor(FILL);
        g.fill(outline);
        drawGrid(g, outline, kind);
        g.setColor(EDGE);
        g.setStroke(Style.line(1));
        g.draw(outline);
    }

    private static void drawGrid(Graphics2D g, Shape outline, PanelKind kind) {
        Shape clip = g.getClip();
        g.clip(outline);
        g.setColor(GRID);
        g.setStroke(Style.line(0.5));
        Rectangle2D box = outline.getBounds2D();
        if (kind == PanelKind.NET) {
            double rise = box.getHeight();
            for (double x = box.getMinX() - rise; x < box.getMaxX(); x += NET_PX) {
                g.draw(new Line2D.Double(x, box.getMaxY(), x + rise, box.getMinY()));
                g.draw(new Line2D.Double(x, box.getMinY(), x + rise, box.getMaxY()));
            }
        } else {
            for (double x = box.getMinX() + MESH_PX; x < box.getMaxX(); x += MESH_PX) {
                g.draw(new Line2D.Double(x, box.getMinY(), x, box.getMaxY()));
            }
            for (double y = box.getMinY() + MESH_PX; y < box.getMaxY(); y += MESH_PX) {
                g.draw(new Line2D.Double(box.getMinX(), y, box.getMaxX(), y));
            }
        }
        g.setClip(clip);
    }

    private static void drawEdgeOn(Graphics2D g, Line2D line, PanelKind kind) {
        g.setColor(EDGE);
        g.setStroke(Style.line(1.2));
        g.draw(line);
        g.setStroke(Style.line(0.7));
        double length = line.getP1().distance(line.getP2());
        double alongX = (line.getX2() - line.getX1()) / length;
        double alongY = (line.getY2() - line.getY1()) / length;
        boolean net = kind == PanelKind.NET;
        double step = net ? NET_PX : MESH_PX;
        for (double at = step / 2; at < length; at += step) {
            double x = line.getX1() + at * alongX;
            double y = line.getY1() + at * alongY;
            // across for mesh, slanting for a net
            double dx = STROKE_PX * (-alongY + (net ? alongX : 0));
            double dy = STROKE_PX * (alongX + (net ? alongY : 0));
            g.draw(new Line2D.Double(x - dx, y - dy, x + dx, y + dy));
        }
    }

    private static Line2D longest(List<Point2D> corners) {
        Line2D longest = new Line2D.Double(corners.get(0), corners.get(0));
        for (Point2D a : corners) {
            for (Point2D b : corners) {
                if (a.distance(b) > longest.getP1().distance(longest.getP2())) {
                    longest = new Line2D.Double(a, b);
                }
            }
        }
        return longest;
    }

    private static double widthAcross(List<Point2D> corners, Line2D longest) {
        return corners.stream().mapToDouble(longest::ptLineDist).max().orElse(0);
    }
}
