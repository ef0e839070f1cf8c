package limbway.reports.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Resource;
import limbway.model.geometry.Segment;

/**
 * The two ways of a trip over a drawing of an enclosure: the way off the ground solid, the one over it dashed and beside it,
 * so that both are seen where they run together; rings round the places where it starts and ends.
 *
 * @param over the way over the ground, move by move
 * @param off the way off the ground, move by move
 * @param ends names of the place where the trip starts and of that where it ends, or none
 */
record TripMarks(List<Segment> over, List<Segment> off, List<String> ends) {

    private static final double OFF_PX = 5.5;
    private static final double OVER_PX = 3;
    private static final double HALO_PX = 2.5;
    private static final double RING_PX = 15;
    private static final double SAMPLE_PX = 44;

    TripMarks {
        over = List.copyOf(over);
        off = List.copyOf(off);
        ends = List.copyOf(ends);
    }

    /** What is drawn, for a reader who cannot see it. */
    String words() {
        List<String> words = new ArrayList<>();
        if (!off.isEmpty()) {
            words.add(" The way off the ground is a solid line.");
        }
        if (!over.isEmpty()) {
            words.add(" The way over the ground is a dashed line.");
        }
        if (!ends.isEmpty()) {
            words.add(" Rings mark where the trip starts (one ring) and where it ends (two).");
        }
        return String.join("", words);
    }

    void draw(Graphics2D g, Frame frame, Enclosure enclosure, boolean plan) {
        lines(g, frame, plan, off, Style.line(OFF_PX + HALO_PX), Style.PAPER);
        lines(g, frame, plan, off, Style.line(OFF_PX), Style.OFF_GROUND);
        lines(g, frame, plan, over, Style.line(OVER_PX + HALO_PX), Style.PAPER);
        lines(g, frame, plan, over, dashes(), Style.INK);
        for (int i = 0; i < ends.size(); i++) {
            String id = ends.get(i);
            for (Resource resource : enclosure.resources()) {
                if (resource.id().equals(id)) {
                    rings(g, plan ? frame.inPlan(resource.at()) : frame.fromSide(resource.at()), i + 1);
                }
            }
        }
    }

    private static BasicStroke dashes() {
        return new BasicStroke((float) OVER_PX, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {9, 6}, 0);
    }

    /** One path, so that dashes run on from move to move. */
    private static void lines(
            Graphics2D g, Frame frame, boolean plan, List<Segment> way, BasicStroke stroke, Color colour) {
        if (way.isEmpty()) {
            return;
        }
        List<Point2D> points = new ArrayList<>();
        points.add(
                plan ? frame.inPlan(way.get(0).a()) : frame.fromSide(way.get(0).a()));
        way.forEach(move -> points.add(plan ? frame.inPlan(move.b()) : frame.fromSide(move.b())));
        g.setColor(colour);
        g.setStroke(stroke);
        g.draw(Frame.open(points));
    }

    private static void rings(Graphics2D g, Point2D at, int rings) {
        g.setColor(Style.INK);
        g.setStroke(Style.line(2));
        for (int i = 0; i < rings; i++) {
            double r = RING_PX + 4.5 * i;
            g.draw(new Ellipse2D.Double(at.getX() - r, at.getY() - r, 2 * r, 2 * r));
        }
    }

    /** The last line of the key. */
    void drawKey(Graphics2D g, double y) {
        Lettering letters = new Lettering(g);
        double x = Frame.LEFT_PX;
        if (!off.isEmpty()) {
            x = sample(g, x, y, Style.line(OFF_PX), Style.OFF_GROUND, "way off the ground", letters);
        }
        if (!over.isEmpty()) {
            x = sample(g, x, y, dashes(), Style.INK, "way over the ground", letters);
        }
        if (!ends.isEmpty()) {
            letters.from("one ring: start, two rings: end", x, y + 4, Style.type(12), Style.INK);
        }
    }

    private static double sample(
            Graphics2D g, double x, double y, BasicStroke stroke, Color colour, String words, Lettering letters) {
        g.setColor(colour);
        g.setStroke(stroke);
        g.draw(new Line2D.Double(x, y, x + SAMPLE_PX, y));
        return letters.from(words, x + SAMPLE_PX + 8, y + 4, Style.type(12), Style.INK) + 22;
    }
}
