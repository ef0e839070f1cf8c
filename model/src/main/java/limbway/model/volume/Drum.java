package limbway.model.volume;

import limbway.model.enclosure.Crown;
import limbway.model.geometry.Point;

/**
 * The crown of a tree: an upright cylinder with flat ends.
 *
 * @param crown its measures
 */
record Drum(Crown crown) implements Shape {

    @Override
    public void addReached(double xM, double yM, double reachM, Spans spans) {
        double outM = planDistanceM(xM, yM);
        if (outM <= reachM) {
            double half = Math.sqrt(reachM * reachM - outM * outM);
            spans.add(crown.baseZM() - half, crown.topZM() + half);
        }
    }

    @Override
    public Point nearestTo(Point place) {
        return crown.space().nearestTo(place);
    }

    @Override
    public double planDistanceM(double xM, double yM) {
        return Math.max(0, new Point(xM, yM, 0).planDistanceM(crown.foot()) - crown.radiusM());
    }

    @Override
    public PlanBox planBox() {
        Point foot = crown.foot();
        double r = crown.radiusM();
        return new PlanBox(foot.xM() - r, foot.yM() - r, foot.xM() + r, foot.yM() + r);
    }
}
