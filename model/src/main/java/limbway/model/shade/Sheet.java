package limbway.model.shade;

import java.util.List;

import limbway.model.geometry.Point;

/** A flat polygon of any shape: roof, sail, deck, face of a wall, panel of mesh. */
final class Sheet implements Caster {

    /** A point lies on a sheet, not below it, when it is nearer than this [m]. */
    private static final double ON_IT_M = 1e-6;

    private final double nx;
    private final double ny;
    private final double nz;
    private final double offset;
    private final int flat;
    private final double[] us;
    private final double[] vs;
    private final double transmittance;
    private final boolean closesAtASlant;
    private final double[] box;

    /**
     * A sheet.
     *
     * @param corners its edge
     * @param normal unit vector
     * @param transmittance share of light that passes when it meets the sheet square on
     * @param closesAtASlant whether light at a slant has as much more to pass as its way through the sheet is longer
     */
    Sheet(List<Point> corners, Point normal, double transmittance, boolean closesAtASlant) {
        nx = normal.xM();
        ny = normal.yM();
        nz = normal.zM();
        offset = corners.stream().mapToDouble(normal::dot).average().orElseThrow();
        flat = flattest(Math.abs(nx), Math.abs(ny), Math.abs(nz));
        us = corners.stream().mapToDouble(p -> flat == 0 ? p.yM() : p.xM()).toArray();
        vs = corners.stream().mapToDouble(p -> flat == 2 ? p.yM() : p.zM()).toArray();
        this.transmittance = transmittance;
        this.closesAtASlant = closesAtASlant;
        box = Boxes.around(corners, 0);
    }

    private static int flattest(double x, double y, double z) {
        if (x >= y && x >= z) {
            return 0;
        }
        return y >= z ? 1 : 2;
    }

    @Override
    public double[] box() {
        return box.clone();
    }

    @Override
    public double through(double x, double y, double z, double dx, double dy, double dz, int season) {
        double slant = nx * dx + ny * dy + nz * dz;
        double t = (offset - nx * x - ny * y - nz * z) / slant;
        // also where the ray runs along the sheet and t is no number
        if (!(t > ON_IT_M && t < 1e9)) {
            return 1;
        }
        double u = flat == 0 ? y + t * dy : x + t * dx;
        double v = flat == 2 ? y + t * dy : z + t * dz;
        if (!covers(u, v)) {
            return 1;
        }
        return closesAtASlant ? StrictMath.pow(transmittance, 1 / Math.abs(slant)) : transmittance;
    }

    private boolean covers(double u, double v) {
        boolean inside = false;
        for (int i = 0, j = us.length - 1; i < us.length; j = i++) {
            if ((vs[i] > v) != (vs[j] > v) && u < (us[j] - us[i]) * (v - vs[i]) / (vs[j] - vs[i]) + us[i]) {
                inside = !inside;
            }
        }
        return inside;
    }
}
