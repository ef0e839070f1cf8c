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

    /** Places farther away than so many steps are served well enough by even ones. */
    private static final double NEAR_STEPS = 3;

    /** Halved steps reach so many of them to either side of a place. */
    private static final int STEPS_ASIDE = 3;

    /** Closer than this a place is taken to lie so far away. */
    private static final double NEAREST_M = 0.02;

    /** Whether a step still belongs to a place must not hang on the last digit. */
    private static final double ROUNDING = 1e-6;

    private final Segment line;
    private final double lengthM;
    private final double stepM;
    private final TreeSet<Double> alongM = new TreeSet<>();

    /** Between two places in plan. */
    SeamSteps(Point a, Point b, double mostStepM) {
        this.line = new Segment(a, b);
        this.lengthM = line.lengthM();
        int steps = (int) Math.ceil(lengthM / mostStepM - ROUNDING);
        this.stepM = lengthM / steps;
        for (int i = 0; i < steps; i++) {
            alongM.add(i * stepM);
        }
        alongM.add(lengthM);
    }

    /** Halves the steps about a place again and again, until they are short against its distance. */
    void refineNear(Point place) {
        Point inPlan = place.atHeight(0);
        double share = line.nearestShare(inPlan);
        double awayM = line.at(share).distanceM(inPlan);
        if (awayM > NEAR_STEPS * stepM) {
            return;
        }
        double footM = share * lengthM;
        if (awayM <= Pieces.SAME_PLACE_M) {
            alongM.add(footM);
        }
        double finestM = Math.max(awayM, NEAREST_M) / 4;
        for (double halvedM = stepM / 2; halvedM >= finestM; halvedM /= 2) {
            long last = (long) Math.floor(footM / halvedM + STEPS_ASIDE + ROUNDING);
            for (long i = (long) Math.ceil(footM / halvedM - STEPS_ASIDE - ROUNDING); i <= last; i++) {
                if (i > 0 && i * halvedM < lengthM - Pieces.SAME_PLACE_M) {
                    alongM.add(i * halvedM);
                }
            }
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
