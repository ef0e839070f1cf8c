package limbway.model.shade;

import java.util.List;

import limbway.model.geometry.Point;

/**
 * A straight piece of a support, rounded at its ends. It hides as much of the sun's disc as it covers, seen from the point, as
 * if it were a strip that crosses the whole disc: too dark for a thin piece seen end on.
 *
 * <p>Where the next piece of the same support goes on, what lies beyond the joint is left to that one: a rope drawn in many
 * short pieces hides no more than in one.
 *
 * <p>A point inside the piece is dark on the side away from the sun; on the axis and before it the piece hides nothing.
 */
final class Member implements Caster {

    /** Half the width of the sun's disc [radians]: 0.533 degrees in all. */
    static final double SUN_RADIUS = Math.toRadians(0.533 / 2);

    private final Point a;
    private final double ux;
    private final double uy;
    private final double uz;
    private final double lengthM;
    private final double radiusAtA;
    private final double radiusAtB;
    private final boolean goesOnAtA;
    private final boolean goesOnAtB;
    private final double[] box;

    /**
     * A piece.
     *
     * @param a one end
     * @param b other end
     * @param radiusAtA radius there [m]
     * @param radiusAtB radius at the other end [m]
     * @param goesOnAtA whether another piece goes on there
     * @param goesOnAtB whether another piece goes on at the other end
     * @param farthestM greatest distance from which it may be looked at [m]: the disc of the sun is the wider, the farther
     */
    Member(
            Point a,
            Point b,
            double radiusAtA,
            double radiusAtB,
            boolean goesOnAtA,
            boolean goesOnAtB,
            double farthestM) {
        this.a = a;
        Point along = b.minus(a);
        lengthM = along.lengthM();
        ux = along.xM() / lengthM;
        uy = along.yM() / lengthM;
        uz = along.zM() / lengthM;
        this.radiusAtA = radiusAtA;
        this.radiusAtB = radiusAtB;
        this.goesOnAtA = goesOnAtA;
        this.goesOnAtB = goesOnAtB;
        box = Boxes.around(List.of(a, b), Math.max(radiusAtA, radiusAtB) + farthestM * SUN_RADIUS);
    }

    @Override
    public double[] box() {
        return box.clone();
    }

    @Override
    public boolean isSlender() {
        return true;
    }

    @Override
    public double through(double x, double y, double z, double dx, double dy, double dz, int season) {
        double wx = x - a.xM();
        double wy = y - a.yM();
        double wz = z - a.zM();
        double cos = ux * dx + uy * dy + uz * dz;
        double alongRay = wx * dx + wy * dy + wz * dz;
        double alongAxis = wx * ux + wy * uy + wz * uz;
        double sin2 = 1 - cos * cos;
        double s = sin2 < 1e-12 ? alongAxis : (alongAxis - cos * alongRay) / sin2;
        if ((goesOnAtA && s < 0) || (goesOnAtB && s >= lengthM)) {
            return 1;
        }
        s = Math.min(lengthM, Math.max(0, s));
        double t = s * cos - alongRay;
        double radius = radiusAtA + (radiusAtB - radiusAtA) * s / lengthM;
        if (t <= radius * 1e-3) {
            return 1;
        }
        double mx = wx + t * dx - s * ux;
        double my = wy + t * dy - s * uy;
        double mz = wz + t * dz - s * uz;
        double miss = Math.sqrt(mx * mx + my * my + mz * mz);
        double sun = t * SUN_RADIUS;
        if (miss >= radius + sun) {
            return 1;
        }
        return 1 - (discLeftOf((miss + radius) / sun) - discLeftOf((miss - radius) / sun));
    }

    /** A support is seldom broader than an animal, and the animal holds on to it: it hides nobody. */
    @Override
    public double before(double x, double y, double z, double dx, double dy, double dz, double lengthM, int season) {
        return 1;
    }

    /** Share of a disc of radius 1 that lies on one side of a line at the distance q from its middle. */
    private static double discLeftOf(double q) {
        if (q >= 1) {
            return 1;
        }
        if (q <= -1) {
            return 0;
        }
        return 0.5 + (StrictMath.asin(q) + q * Math.sqrt(1 - q * q)) / Math.PI;
    }
}
