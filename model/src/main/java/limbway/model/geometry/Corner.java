package limbway.model.geometry;

/**
 * A point of a plan.
 *
 * @param xM metres east
 * @param yM metres north
 */
public record Corner(double xM, double yM) {

    /**
     * The point of space above this corner.
     *
     * @param zM height [m]
     * @return the point
     */
    public Point atHeight(double zM) {
        return new Point(xM, yM, zM);
    }
}
