package limbway.model.shade;

import java.util.List;

import limbway.model.enclosure.Crown;
import limbway.model.geometry.Point;

/** The crown of a tree as an ellipsoid evenly filled with leaves, or in its bare season with twigs. */
final class Leaves implements Caster {

    private final Point middle;
    private final double radiusM;
    private final double halfDepthM;
    private final double[] extinctionPerM;

    /**
     * A crown.
     *
     * @param crown its measures; the ellipsoid is the greatest that fits into the cylinder
     * @param extinctionPerM share of light taken from a thin layer, by its thickness [1/m], for each state of the leaves
     */
    Leaves(Crown crown, double[] extinctionPerM) {
        middle = crown.foot().atHeight((crown.baseZM() + crown.topZM()) / 2);
        radiusM = crown.radiusM();
        halfDepthM = (crown.topZM() - crown.baseZM()) / 2;
        this.extinctionPerM = extinctionPerM.clone();
    }

    @Override
    public double[] box() {
        Point reach = new Point(radiusM, radiusM, halfDepthM);
        return Boxes.around(List.of(middle.minus(reach), middle.plus(reach)), 1e-6);
    }

    @Override
    public double through(double x, double y, double z, double dx, double dy, double dz, int season) {
        return before(x, y, z, dx, dy, dz, Double.POSITIVE_INFINITY, season);
    }

    @Override
    public double before(double x, double y, double z, double dx, double dy, double dz, double lengthM, int season) {
        double px = (x - middle.xM()) / radiusM;
        double py = (y - middle.yM()) / radiusM;
        double pz = (z - middle.zM()) / halfDepthM;
        double qx = dx / radiusM;
        double qy = dy / radiusM;
        double qz = dz / halfDepthM;
        double a = qx * qx + qy * qy + qz * qz;
        double b = px * qx + py * qy + pz * qz;
        double c = px * px + py * py + pz * pz - 1;
        double root = b * b - a * c;
        if (root <= 0) {
            return 1;
        }
        double half = Math.sqrt(root);
        double out = Math.min(lengthM, (half - b) / a);
        double in = Math.max(0, (-half - b) / a);
        return out <= in ? 1 : StrictMath.exp(-extinctionPerM[season] * (out - in));
    }
}
