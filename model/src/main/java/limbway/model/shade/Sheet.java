package limbway.model.shade;

import java.util.List;

import limbway.model.geometry.Point;

/** A flat polygon of any shape: roof, sail, deck, face of a wall, panel of mesh. */
final class Sheet implements Caster {

    /** A point lies on a sheet, not below it, when it is nearer than this [m]. */
    private static final double ON_IT_M = 1e-6;

    /** Whatever would be farther away is met by a ray that runs along the sheet [m]. */
    private static final double FARTHEST_M = 1e9;

    /** A ray in the very edge of a box is no concern of the tree's: boxes are this much larger [m]. */
    private static final double ROUNDING_M = 1e-6;

    private final double nx;
    private final double ny;
    private final double nz;
    private final double offset;
    private final int flat;
    private final double[] us;
    private final double[] vs;
    private final double transmittance;
    private final double strandShare;
    private final Point strands;
    private final Point acrossStrands;
    private final double[] box;

    private Sheet(List<Point> corners, Point normal, double transmittance, double strandShare) {
        nx = normal.xM();
        ny = normal.yM();
        nz = normal.zM();
        offset = corners.stream().mapToDouble(normal::dot).average().orElseThrow();
        flat = flattest(Math.abs(nx), Math.abs(ny), Math.abs(nz));
        us = corners.stream().mapToDouble(p -> flat == 0 ? p.yM() : p.xM()).toArray();
        vs = corners.stream().mapToDouble(p -> flat == 2 ? p.yM() : p.zM()).toArray();
        this.transmittance = transmittance;
        this.strandShare = strandShare;
        Point side = corners.get(1).minus(corners.get(0));
        side = side.minus(normal.times(side.dot(normal)));
        strands = side.times(1 / side.lengthM());
        acrossStrands = new Point(
                ny * strands.zM() - nz * strands.yM(),
                nz * strands.xM() - nx * strands.zM(),
                nx * strands.yM() - ny * strands.xM());
        box = Boxes.around(corners, ROUNDING_M);
    }

    /**
     * Cloth, board or glass.
     *
     * @param corners its edge
     * @param normal unit vector
     * @param transmittance share of light that passes, at any angle
     */
    static Sheet of(List<Point> corners, Point normal, double transmittance) {
        return new Sheet(corners, normal, transmittance, 0);
    }

    /**
     * Mesh or net of round strands in two directions, along its first side and at right angles to it.
     *
     * @param corners its edge
     * @param normal unit vector
     * @param strandShare thickness of a strand over the distance from one to the next, 0 to 1
     */
    static Sheet mesh(List<Point> corners, Point normal, double strandShare) {
        return new Sheet(corners, normal, 0, strandShare);
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
    public boolean isOpaque() {
        return strandShare == 0 && transmittance == 0;
    }

    @Override
    public double through(double x, double y, double z, double dx, double dy, double dz, int season) {
        return before(x, y, z, dx, dy, dz, FARTHEST_M, season);
    }

    @Override
    public double before(double x, double y, double z, double dx, double dy, double dz, double lengthM, int season) {
        double slant = nx * dx + ny * dy + nz * dz;
        double t = (offset - nx * x - ny * y - nz * z) / slant;
        // also where the ray runs along the sheet and t is no number
        if (!(t > ON_IT_M && t < lengthM - ON_IT_M)) {
            return 1;
        }
        double u = flat == 0 ? y + t * dy : x + t * dx;
        double v = flat == 2 ? y + t * dy : z + t * dz;
        if (!covers(u, v)) {
            return 1;
        }
        return strandShare == 0 ? transmittance : betweenStrands(Math.abs(slant), dx, dy, dz);
    }

    /**
     * Light between strands: two of them, side by side, lie {@code cos / sin} of their distance apart as seen along the ray,
     * with the angles from the ray to the normal and to the strand.
     */
    private double betweenStrands(double slant, double dx, double dy, double dz) {
        double along = strands.xM() * dx + strands.yM() * dy + strands.zM() * dz;
        double across = acrossStrands.xM() * dx + acrossStrands.yM() * dy + acrossStrands.zM() * dz;
        double first = 1 - strandShare * Math.sqrt(1 - Math.min(1, along * along)) / slant;
        double second = 1 - strandShare * Math.sqrt(1 - Math.min(1, across * across)) / slant;
        return Math.max(0, first) * Math.max(0, second);
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
