package limbway.model.volume;

import limbway.model.geometry.Point;

/**
 * A level surface: the ground or a deck.
 *
 * @param area its plan
 * @param zM its height [m]
 */
record Level(PlanArea area, double zM) implements Shape {

    @Override
    public void addReached(double xM, double yM, double reachM, Spans spans) {
        double outM = area.distanceM(xM, yM);
        if (outM <= reachM) {
            double half = Math.sqrt(reachM * reachM - outM * outM);
            spans.add(zM - half, zM + half);
        }
    }

    @Override
    public Point nearestTo(Point place) {
        return area.nearestTo(place.xM(), place.yM()).atHeight(zM);
    }

    @Override
    public double planDistanceM(double xM, double yM) {
        return area.distanceM(xM, yM);
    }

    @Override
    public PlanBox planBox() {
        return area.box();
    }
}
