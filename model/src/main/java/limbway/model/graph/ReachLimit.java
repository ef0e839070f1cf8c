package limbway.model.graph;

import java.util.function.DoubleUnaryOperator;

/**
 * Finds where along a line something comes within a distance, when the distance falls towards one nearest place and
 * rises beyond it, as it does from a line to any convex shape.
 *
 * <p>An animal saves most where it reaches over at the very limit of its reach; without holds there, costs would depend
 * on how finely supports are divided.
 */
final class ReachLimit {

    private ReachLimit() {}

    /**
     * The shares at which the distance passes the limit, on either side of the nearest place; none where it does not.
     *
     * @param distanceM distance at a share of the line, 0 to 1
     * @param nearestShare where it is least
     * @param limitM the limit
     * @return up to two shares at which the distance is still within the limit
     */
    static double[] shares(DoubleUnaryOperator distanceM, double nearestShare, double limitM) {
        if (distanceM.applyAsDouble(nearestShare) > limitM) {
            return new double[0];
        }
        boolean before = distanceM.applyAsDouble(0) > limitM;
        boolean after = distanceM.applyAsDouble(1) > limitM;
        double[] found = new double[(before ? 1 : 0) + (after ? 1 : 0)];
        int count = 0;
        if (before) {
            found[count++] = bisect(distanceM, nearestShare, 0, limitM);
        }
        if (after) {
            found[count] = bisect(distanceM, nearestShare, 1, limitM);
        }
        return found;
    }

    /** Narrows down to neighbouring numbers, so that the answer does not depend on which end the line starts from. */
    private static double bisect(DoubleUnaryOperator distanceM, double inside, double outside, double limitM) {
        double in = inside;
        double out = outside;
        while (true) {
            double middle = (in + out) / 2;
            if (middle == in || middle == out) {
                return in;
            }
            if (distanceM.applyAsDouble(middle) <= limitM) {
                in = middle;
            } else {
                out = middle;
            }
        }
    }
}
