package limbway.model.graph;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/**
 * Divides a seam into even steps, and into finer ones where a place lies so close that even steps would turn ways to it
 * aside.
 */
final class SeamSteps {

    /** Steps grow by this factor with distance from a place. */
    private static final double GROWTH = 1.5;

    /** Places farther away than so many steps are served well enough by even ones. */
    private static final double NEAR_STEPS = 3;

    /** Closer than this a place is taken to lie so far away. */
    private static final double NEAREST_M = 0.02;

    private final Segment line;
    private final double lengthM;
    private final double stepM;
    private final TreeSet<Double> alongM = new TreeSet<>();

    /** Between two places in plan. */
    SeamSteps(Point a, Point b, double stepM) {
        this.line = new Segment(a, b);
        this.lengthM = line.lengthM();
        this.stepM = stepM;
        int steps = (int) Math.ceil(lengthM / stepM - 1e-9);
        for (int i = 0; i <= steps; i++) {
            alongM.add(i == steps ? lengthM : i * lengthM / steps);
        }
    }

    /** Adds steps about a place, the finer the closer it lies. */
    void refineNear(Point place) {
        Point inPlan = place.atHeight(0);
        double share = line.nearestShare(inPlan);
        double awayM = line.at(share).distanceM(inPlan);
        if (awayM > NEAR_STEPS * stepM) {
            return;
        }
        double footM = share * lengthM;
        addUnlessNear(footM, Math.max(awayM, NEAREST_M) / 4);
        if (awayM > Pieces.SAME_PLACE_M) {
            for (double offM = Math.max(awayM, NEAREST_M) / 2; offM < 2 * stepM; offM *= GROWTH) {
                addUnlessNear(footM - offM, offM / 4);
                addUnlessNear(footM + offM, offM / 4);
            }
        }
    }

    private void addUnlessNear(double placeM, double apartM) {
        if (placeM > 0
                && placeM < lengthM
                && alongM.subSet(placeM - apartM, placeM + apartM).isEmpty()) {
            alongM.add(placeM);
        }
    }

    /** The places in plan, from one end to the other. */
    List<Point> places() {
        List<Point> places = new ArrayList<>();
        for (double placeM : alongM) {
            places.add(line.at(placeM / lengthM));
        }
        return places;
    }
}
