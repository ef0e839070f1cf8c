package limbway.model.graph;

import java.util.function.DoubleUnaryOperator;

import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

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

    /**
     * The same for the distance to another line, in closed form: the places where this line leaves the cylinder round
     * the other or the spheres round its ends.
     *
     * @param line the line that is divided
     * @param other the line that is reached for
     * @param nearestShare where the two come closest, on the first
     * @param limitM the limit, not below their least distance
     * @return up to two shares at which the distance is the limit
     */
    static double[] shares(Segment line, Segment other, double nearestShare, double limitM) {
        boolean before = other.distanceM(line.a()) > limitM;
        boolean after = other.distanceM(line.b()) > limitM;
        double[] found = new double[(before ? 1 : 0) + (after ? 1 : 0)];
        int count = 0;
        if (before) {
            found[count++] = leaving(line, other, nearestShare, limitM, false);
        }
        if (after) {
            found[count] = leaving(line, other, nearestShare, limitM, true);
        }
        return found;
    }

    private static double leaving(Segment line, Segment other, double nearestShare, double limitM, boolean onward) {
        Point d = line.b().minus(line.a());
        Point axis = other.b().minus(other.a());
        Point fromStart = line.a().minus(other.a());
        Point fromEnd = line.a().minus(other.b());
        double axisSquare = axis.dot(axis);
        double[] candidates = {
            root(d, fromStart, limitM, onward),
            root(d, fromEnd, limitM, onward),
            root(across(d, axis, axisSquare), across(fromStart, axis, axisSquare), limitM, onward)
        };
        double best = nearestShare;
        double leastMiss = Double.MAX_VALUE;
        for (double share : candidates) {
            boolean beyond = onward ? share >= nearestShare && share <= 1 : share <= nearestShare && share >= 0;
            double miss = beyond ? Math.abs(other.distanceM(line.at(share)) - limitM) : Double.MAX_VALUE;
            if (miss < leastMiss) {
                leastMiss = miss;
                best = share;
            }
        }
        return best;
    }

    /** The larger or smaller solution of {@code |from + share d| = limit}; not a number where there is none. */
    private static double root(Point d, Point from, double limitM, boolean larger) {
        double a = d.dot(d);
        double b = d.dot(from);
        double c = from.dot(from) - limitM * limitM;
        double square = Math.sqrt(b * b - a * c);
        return (larger ? square - b : -square - b) / a;
    }

    /** The part of a displacement at right angles to an axis. */
    private static Point across(Point d, Point axis, double axisSquare) {
        return axisSquare == 0 ? d : d.minus(axis.times(d.dot(axis) / axisSquare));
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
