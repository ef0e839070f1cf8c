package limbway.model.geometry;

/**
 * A point in space, or a displacement between two.
 *
 * @param xM metres east
 * @param yM metres north
 * @param zM metres up
 */
public record Point(double xM, double yM, double zM) {

    /**
     * Adds a displacement.
     *
     * @param d displacement [m]
     * @return this point moved by {@code d}
     */
    public Point plus(Point d) {
        return new Point(xM + d.xM, yM + d.yM, zM + d.zM);
    }

    /**
     * The displacement from another point to this one.
     *
     * @param from start of the displacement
     * @return this minus {@code from} [m]
     */
    public Point minus(Point from) {
        return new Point(xM - from.xM, yM - from.yM, zM - from.zM);
    }

    /**
     * Scales a displacement.
     *
     * @param factor any finite number
     * @return this times {@code factor}
     */
    public Point times(double factor) {
        return new Point(xM * factor, yM * factor, zM * factor);
    }

    /**
     * The inner product of two displacements.
     *
     * @param d other displacement
     * @return sum of the products of the components [m²]
     */
    public double dot(Point d) {
        return xM * d.xM + yM * d.yM + zM * d.zM;
    }

    /**
     * Length of this displacement.
     *
     * @return length [m], 0 or more
     */
    public double lengthM() {
        return Math.sqrt(dot(this));
    }

    /**
     * Straight distance to another point.
     *
     * @param other any point
     * @return distance [m], 0 or more
     */
    public double distanceM(Point other) {
        return other.minus(this).lengthM();
    }

    /**
     * Distance to another point seen from above.
     *
     * @param other any point
     * @return horizontal distance [m], 0 or more
     */
    public double planDistanceM(Point other) {
        double dx = other.xM - xM;
        double dy = other.yM - yM;
        return Math.sqrt(dx * dx + dy * dy);
    }

    /**
     * The same place at another height.
     *
     * @param newZM height [m]
     * @return a copy with that height
     */
    public Point atHeight(double newZM) {
        return new Point(xM, yM, newZM);
    }
}
