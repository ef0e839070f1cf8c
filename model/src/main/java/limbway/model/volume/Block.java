package limbway.model.volume;

import limbway.model.geometry.Point;

/**
 * An upright block of space, with everything nearer to it than a distance; square at its upper and lower rim.
 *
 * @param area its footprint
 * @param baseZM height of its lower end [m]
 * @param topZM height of its top [m]
 * @param aroundM distance [m], 0 or more
 */
record Block(PlanArea area, double baseZM, double topZM, double aroundM) implements Shape {

    @Override
    public void addReached(double xM, double yM, double reachM, Spans spans) {
        if (area.distanceM(xM, yM) <= reachM + aroundM) {
            spans.add(baseZM - reachM - aroundM, topZM + reachM + aroundM);
        }
    }

    @Override
    public Point nearestTo(Point place) {
        double zM = Math.max(baseZM, Math.min(topZM, place.zM()));
        return area.nearestTo(place.xM(), place.yM()).atHeight(zM);
    }

    @Override
    public double planDistanceM(double xM, double yM) {
        return Math.max(0, area.distanceM(xM, yM) - aroundM);
    }

    @Override
    public PlanBox planBox() {
        PlanBox box = area.box();
        return new PlanBox(
                box.westM() - aroundM, box.southM() - aroundM, box.eastM() + aroundM, box.northM() + aroundM);
    }
}
