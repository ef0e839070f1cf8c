package limbway.model.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A line of straight pieces.
 *
 * @param points at least two points, in order
 */
public record Polyline(List<Point> points) {

    /**
     * Checks the number of points and keeps a copy.
     *
     * @throws IllegalArgumentException if there are fewer than two points
     */
    public Polyline {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("polyline: points = " + points.size() + ", allowed 2 or more");
        }
    }

    /**
     * A line of one piece.
     *
     * @param a one end
     * @param b other end
     * @return the line
     */
    public static Polyline straight(Point a, Point b) {
        return new Polyline(List.of(a, b));
    }

    /**
     * The straight pieces in order.
     *
     * @return one segment fewer than there are points
     */
    public List<Segment> pieces() {
        List<Segment> pieces = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            pieces.add(new Segment(points.get(i - 1), points.get(i)));
        }
        return pieces;
    }

    /**
     * Length along the line.
     *
     * @return length [m]
     */
    public double lengthM() {
        double sum = 0;
        for (Segment piece : pieces()) {
            sum += piece.lengthM();
        }
        return sum;
    }

    /**
     * The first point.
     *
     * @return start of the line
     */
    public Point start() {
        return points.get(0);
    }

    /**
     * The last point.
     *
     * @return end of the line
     */
    public Point end() {
        return points.get(points.size() - 1);
    }

    /**
     * The distance along the line of its place nearest to a point.
     *
     * @param near any point
     * @return distance from the start [m], 0 to {@link #lengthM()}
     */
    public double alongM(Point near) {
        double best = 0;
        double bestM = Double.POSITIVE_INFINITY;
        double beforeM = 0;
        for (Segment piece : pieces()) {
            double share = piece.nearestShare(near);
            double awayM = piece.at(share).distanceM(near);
            if (awayM < bestM) {
                bestM = awayM;
                best = beforeM + share * piece.lengthM();
            }
            beforeM += piece.lengthM();
        }
        return best;
    }

    /**
     * The point at a distance along the line.
     *
     * @param alongM distance from the start [m], 0 to {@link #lengthM()}
     * @return the point
     * @throws IllegalArgumentException if the distance lies outside the line
     */
    public Point atLength(double alongM) {
        double left = alongM;
        for (Segment piece : pieces()) {
            double lengthM = piece.lengthM();
            if (left >= 0 && left <= lengthM) {
                return piece.at(lengthM == 0 ? 0 : left / lengthM);
            }
            left -= lengthM;
        }
        if (Math.abs(left) < 1e-9) {
            return end();
        }
        throw new IllegalArgumentException("polyline: alongM = " + alongM + ", allowed 0 to " + lengthM());
    }
}
