package limbway.model.geometry;

/**
 * A triangle in space that does not stand upright.
 *
 * @param a one corner
 * @param b another
 * @param c the third
 */
public record Triangle(Point a, Point b, Point c) {

    private static final double SMALLEST_DOUBLE_AREA_M2 = 1e-9;

    /**
     * Checks that it covers some area in plan.
     *
     * @throws IllegalArgumentException if its corners lie in one line, seen from above
     */
    public Triangle {
        if (Math.abs(doubleArea(a, b, c.xM(), c.yM())) < SMALLEST_DOUBLE_AREA_M2) {
            throw new IllegalArgumentException(
                    "triangle: corners = " + a + ", " + b + ", " + c + ", allowed not in one line in plan");
        }
    }

    /**
     * Whether a place lies on or in the triangle in plan.
     *
     * @param xM metres east
     * @param yM metres north
     * @return true also within a nanometre of an edge
     */
    public boolean covers(double xM, double yM) {
        double all = doubleArea(a, b, c.xM(), c.yM());
        double slack = -1e-9;
        return doubleArea(a, b, xM, yM) / all >= slack
                && doubleArea(b, c, xM, yM) / all >= slack
                && doubleArea(c, a, xM, yM) / all >= slack;
    }

    /**
     * The height of its plane over a place.
     *
     * @param xM metres east
     * @param yM metres north
     * @return height [m]
     */
    public double heightM(double xM, double yM) {
        double all = doubleArea(a, b, c.xM(), c.yM());
        return (a.zM() * doubleArea(b, c, xM, yM)
                        + b.zM() * doubleArea(c, a, xM, yM)
                        + c.zM() * doubleArea(a, b, xM, yM))
                / all;
    }

    private static double doubleArea(Point from, Point to, double xM, double yM) {
        return (to.xM() - from.xM()) * (yM - from.yM()) - (xM - from.xM()) * (to.yM() - from.yM());
    }
}
