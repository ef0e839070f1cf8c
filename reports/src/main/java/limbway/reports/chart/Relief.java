package limbway.reports.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Ground;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.geometry.Triangle;
import limbway.reports.words.Figures;

/** Ground that is not level: lines of equal height from above, its outline against the sky from the side. */
final class Relief {

    private static final Color LINE = new Color(0xB4, 0xAC, 0x90);
    private static final Color BODY = new Color(0xEC, 0xE9, 0xDD);
    private static final double[] STEPS_M = {0.1, 0.2, 0.25, 0.5, 1, 2, 5, 10};
    private static final int MOST_LINES = 8;

    /** Places of the profile across the line of sight. */
    private static final int ROWS = 24;

    private static final double COLUMN_PX = 3;

    private final Ground ground;
    private final double lowM;
    private final double highM;

    Relief(Ground ground) {
        this.ground = ground;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Triangle triangle : ground.terrain().triangles()) {
            for (Point corner : List.of(triangle.a(), triangle.b(), triangle.c())) {
                low = Math.min(low, corner.zM());
                high = Math.max(high, corner.zM());
            }
        }
        this.lowM = low;
        this.highM = high;
    }

    /** Whether there is anything to draw. */
    boolean isHilly() {
        return highM > lowM;
    }

    /** From one line to the next [m]. */
    double stepM() {
        for (double step : STEPS_M) {
            if ((highM - lowM) / step <= MOST_LINES) {
                return step;
            }
        }
        return STEPS_M[STEPS_M.length - 1];
    }

    static void drawSample(Graphics2D g, Rectangle2D area) {
        g.setColor(LINE);
        g.setStroke(Style.line(0.8));
        for (double y : new double[] {area.getMinY() + 4, area.getMaxY() - 4}) {
            Path2D line = new Path2D.Double();
            line.moveTo(area.getMinX(), y + 2);
            line.curveTo(area.getMinX() + 12, y - 5, area.getMaxX() - 12, y + 5, area.getMaxX(), y - 2);
            g.draw(line);
        }
    }

    void drawPlan(Graphics2D g, Frame frame) {
        Shape clip = g.getClip();
        g.clip(frame.inPlan(ground.outline()));
        g.setFont(Style.type(9));
        for (long n = (long) Math.ceil(lowM / stepM()); n * stepM() < highM; n++) {
            double zM = n * stepM();
            List<Segment> line = level(zM);
            g.setColor(LINE);
            g.setStroke(Style.line(0.8));
            Segment longest = null;
            for (Segment piece : line) {
                g.draw(frame.inPlan(piece));
                longest = longest == null || piece.lengthM() > longest.lengthM() ? piece : longest;
            }
            if (longest != null) {
                g.setColor(Style.FAINT);
                var at = frame.inPlan(longest.at(0.5));
                g.drawString(Figures.decimals(zM, 2), (float) at.getX(), (float) at.getY() - 2);
            }
        }
        g.setClip(clip);
    }

    void drawSide(Graphics2D g, Frame frame) {
        List<Point2D> skyline = new ArrayList<>();
        double right = frame.xPx(frame.eastM());
        for (double x = Frame.LEFT_PX; x <= right; x += COLUMN_PX) {
            double highest = skylineM(frame, frame.xM(x));
            if (highest >= lowM) {
                skyline.add(new Point2D.Double(x, frame.sideYPx(highest)));
            }
        }
        if (skyline.isEmpty()) {
            return;
        }
        List<Point2D> body = new ArrayList<>(skyline);
        body.add(new Point2D.Double(skyline.get(skyline.size() - 1).getX(), frame.bottomPx()));
        body.add(new Point2D.Double(skyline.get(0).getX(), frame.bottomPx()));
        g.setColor(BODY);
        g.fill(Frame.closed(body));
        g.setColor(LINE);
        g.setStroke(Style.line(1.2));
        g.draw(Frame.open(skyline));
    }

    /** The highest ground from south to north; below all ground where there is none. */
    private double skylineM(Frame frame, double xM) {
        double highest = Double.NEGATIVE_INFINITY;
        for (int row = 0; row <= ROWS; row++) {
            double yM = frame.southM() + (frame.northM() - frame.southM()) * row / ROWS;
            if (ground.outline().covers(xM, yM)) {
                highest = Math.max(highest, ground.terrain().heightM(xM, yM));
            }
        }
        return highest;
    }

    /** Where the triangles pass through a height. */
    private List<Segment> level(double zM) {
        List<Segment> pieces = new ArrayList<>();
        for (Triangle t : ground.terrain().triangles()) {
            List<Point> crossings = new ArrayList<>();
            for (Segment side :
                    List.of(new Segment(t.a(), t.b()), new Segment(t.b(), t.c()), new Segment(t.c(), t.a()))) {
                // a corner on the line counts as below it, so that each line enters and leaves a triangle once
                if (side.a().zM() > zM != side.b().zM() > zM) {
                    crossings.add(side.at(
                            (zM - side.a().zM()) / (side.b().zM() - side.a().zM())));
                }
            }
            if (crossings.size() == 2) {
                pieces.add(new Segment(crossings.get(0), crossings.get(1)));
            }
        }
        return pieces;
    }
}
