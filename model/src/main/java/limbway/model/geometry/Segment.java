package limbway.model.geometry;

/**
 * A straight line between two points.
 *
 * @param a one end
 * @param b other end
 */
public record Segment(Point a, Point b) {

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
}
