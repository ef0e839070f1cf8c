package limbway.reports.chart;

import java.awt.Graphics2D;
import java.util.List;

import limbway.model.geometry.Segment;
import limbway.reports.measure.Stretch;

/** Draws travel: solid off the ground, dashed on it, broader where it is travelled more often. */
final class TravelLines {

    private static final double WIDEST_PX = 7;
    private static final double NARROWEST_PX = 0.8;

    /** Off the ground a line lies over the support that carries it and must stand out from it [px]. */
    private static final double OVER_SUPPORT_PX = 0.8;

    private final List<Stretch> stretches;
    private final double mostPerDay;

    TravelLines(List<Stretch> stretches) {
        this.stretches = stretches;
        this.mostPerDay =
                stretches.stream().mapToDouble(Stretch::timesPerDay).max().orElse(1);
    }

    double mostPerDay() {
        return mostPerDay;
    }

    /** The width is in proportion to the passages, but never too thin to see. */
    double widthPx(double timesPerDay) {
        return Math.max(NARROWEST_PX, WIDEST_PX * timesPerDay / mostPerDay);
    }

    void draw(Graphics2D g, Frame frame, boolean plan) {
        for (boolean onGround : new boolean[] {true, false}) {
            for (Stretch stretch : stretches) {
                if (stretch.onGround() == onGround) {
                    double width = widthPx(stretch.timesPerDay()) + (onGround ? 0 : OVER_SUPPORT_PX);
                    g.setColor(onGround ? Style.GROUND : Style.OFF_GROUND);
                    g.setStroke(onGround ? Style.dashed(width) : Style.line(width));
                    Segment line = new Segment(stretch.a(), stretch.b());
                    g.draw(plan ? frame.inPlan(line) : frame.fromSide(line));
                }
            }
        }
    }
}
