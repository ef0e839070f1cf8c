package limbway.model.geometry;

/**
 * An upright cylinder.
 *
 * @param axis its upright middle line, either end first
 * @param radiusM radius [m], above 0
 */
public record UprightCylinder(Segment axis, double radiusM) {

    /**
     * The point of the cylinder that is nearest to a point.
     *
     * @param p any point
     * @return a point within the cylinder or on its surface; {@code p} itself if it lies within
     */
    public Point nearestTo(Point p) {
        double lowM = Math.min(axis.a().zM(), axis.b().zM());
        double highM = Math.max(axis.a().zM(), axis.b().zM());
        double zM = Math.max(lowM, Math.min(highM, p.zM()));
        double outM = p.planDistanceM(axis.a());
        return outM <= radiusM ? p.atHeight(zM) : new Segment(axis.a().atHeight(zM), p.atHeight(zM)).at(radiusM / outM);
    }

    /**
     * Distance from a point.
     *
     * @param p any point
     * @return distance [m], 0 within
     */
    public double distanceM(Point p) {
        return nearestTo(p).distanceM(p);
    }

    /**
     * Where a line comes nearest to the cylinder. The distance to a convex body is convex along a line, so cutting the line
     * in three again and again finds it.
     *
     * @param line any line
     * @return share of the line, 0 to 1
     */
    public double nearestShare(Segment line) {
        return line.leastShare(this::distanceM);
    }
}
