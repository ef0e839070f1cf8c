package limbway.model.geometry;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * A straight line between two points.
 *
 * @param a one end
 * @param b other end
 */
public record Segment(Point a, Point b) {

    /** Each step keeps two thirds of the line; after so many less than a billionth is left. */
    private static final int STEPS = 60;

    /**
     * Length of the line.
     *
     * @return length [m], 0 or more
     */
    public double lengthM() {
        return a.distanceM(b);
    }

    /**
     * A point on the line through both ends.
     *
     * @param share 0 at {@code a}, 1 at {@code b}
     * @return the point; both ends are returned exactly
     */
    public Point at(double share) {
        if (share == 0) {
            return a;
        }
        if (share == 1) {
            return b;
        }
        return a.plus(b.minus(a).times(share));
    }

    /**
     * Points spread evenly over the line, both ends among them.
     *
     * @param stepM greatest distance between one and the next [m], above 0
     * @return two points or more, from {@code a} to {@code b}
     */
    public List<Point> every(double stepM) {
        int steps = (int) Math.max(1, Math.ceil(lengthM() / stepM));
        return IntStream.rangeClosed(0, steps)
                .mapToObj(i -> at((double) i / steps))
                .toList();
    }

    /**
     * Where this line comes closest to a point.
     *
     * @param p any point
     * @return share of the length between 0 and 1; 0 for a line without length
     */
    public double nearestShare(Point p) {
        Point d = b.minus(a);
        double square = d.dot(d);
        return square == 0 ? 0 : clampToUnit(p.minus(a).dot(d) / square);
    }

    /**
     * Distance from a point to the nearest point of this line.
     *
     * @param p any point
     * @return distance [m], 0 or more
     */
    public double distanceM(Point p) {
        return at(nearestShare(p)).distanceM(p);
    }

    static double clampToUnit(double share) {
        return Math.max(0, Math.min(1, share));
    }

    /**
     * Where a distance that falls towards one place and rises beyond it, as that to any convex body does, is least: found
     * by cutting the line in three again and again.
     *
     * @param distanceM distance of a point [m]
     * @return share of the line, 0 to 1
     */
    public double leastShare(ToDoubleFunction<Point> distanceM) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < STEPS; i++) {
            double third = (high - low) / 3;
            boolean left = distanceM.applyAsDouble(at(low + third)) <= distanceM.applyAsDouble(at(high - third));
            high = left ? high - third : high;
            low = left ? low : low + third;
        }
        return (low + high) / 2;
    }
}
