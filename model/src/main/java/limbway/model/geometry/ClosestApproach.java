package limbway.model.geometry;

/**
 * Where two straight lines come closest to each other.
 *
 * @param shareOnFirst place on the first line, 0 at its start, 1 at its end
 * @param shareOnSecond place on the second line, likewise
 * @param distanceM distance between the two places [m], 0 or more
 */
public record ClosestApproach(double shareOnFirst, double shareOnSecond, double distanceM) {

    /** Sine of the angle below which two lines count as parallel. */
    private static final double PARALLEL_SINE = 1e-6;

    /**
     * Finds the closest approach of two lines of finite length.
     *
     * <p>Parallel lines have many closest pairs; then a pair at one of the four ends is returned, so that the answer
     * does not depend on which line is named first.
     *
     * @param first one line
     * @param second other line
     * @return the closest pair of places
     * @source the two-parameter minimisation of a quadratic on the unit square, solved on its edges when the inner
     *     solution falls outside; textbook geometry, written from the definition
     */
    public static ClosestApproach of(Segment first, Segment second) {
        Point u = first.b().minus(first.a());
        Point v = second.b().minus(second.a());
        Point w = first.a().minus(second.a());
        double uu = u.dot(u);
        double vv = v.dot(v);
        double uv = u.dot(v);
        double determinant = uu * vv - uv * uv;
        if (determinant > PARALLEL_SINE * PARALLEL_SINE * uu * vv) {
            double s = (uv * v.dot(w) - vv * u.dot(w)) / determinant;
            double t = (uu * v.dot(w) - uv * u.dot(w)) / determinant;
            if (s >= 0 && s <= 1 && t >= 0 && t <= 1) {
                return between(first, s, second, t);
            }
        }
        ClosestApproach best = between(first, 0, second, second.nearestShare(first.a()));
        best = nearer(best, between(first, 1, second, second.nearestShare(first.b())));
        best = nearer(best, between(first, first.nearestShare(second.a()), second, 0));
        return nearer(best, between(first, first.nearestShare(second.b()), second, 1));
    }

    private static ClosestApproach between(Segment first, double s, Segment second, double t) {
        return new ClosestApproach(s, t, first.at(s).distanceM(second.at(t)));
    }

    private static ClosestApproach nearer(ClosestApproach one, ClosestApproach other) {
        return other.distanceM < one.distanceM ? other : one;
    }
}
