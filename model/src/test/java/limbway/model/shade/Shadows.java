package limbway.model.shade;

import limbway.model.geometry.Point;

/** Shadows on level ground at height 0, measured ray by ray. */
final class Shadows {

    private Shadows() {}

    /** The direction towards a sun of this altitude and azimuth [degrees], x east, y north. */
    static Point sun(double altitudeDeg, double azimuthDeg) {
        double a = Math.toRadians(altitudeDeg);
        double azimuth = Math.toRadians(azimuthDeg);
        return new Point(Math.cos(a) * Math.sin(azimuth), Math.cos(a) * Math.cos(azimuth), Math.sin(a));
    }

    static double light(Caster caster, double x, double y, Point sun) {
        return caster.through(x, y, 0, sun.xM(), sun.yM(), sun.zM(), 0);
    }

    /** Area of the ground in a square around a place at which less than half of the light arrives [m2]. */
    static double areaM2(Caster caster, Point sun, double x, double y, double halfM, double cellM) {
        int cells = (int) Math.round(2 * halfM / cellM);
        int dark = 0;
        for (int i = 0; i < cells; i++) {
            for (int j = 0; j < cells; j++) {
                dark += light(caster, x - halfM + (i + 0.5) * cellM, y - halfM + (j + 0.5) * cellM, sun) < 0.5 ? 1 : 0;
            }
        }
        return dark * cellM * cellM;
    }

    /** How far the shadow reaches along a direction on the ground, from a place inside it [m]. */
    static double reachM(Caster caster, Point sun, double x, double y, double dx, double dy, double mostM) {
        double dark = 0;
        double lit = mostM;
        while (lit - dark > 1e-9) {
            double middle = (dark + lit) / 2;
            if (light(caster, x + middle * dx, y + middle * dy, sun) < 0.5) {
                dark = middle;
            } else {
                lit = middle;
            }
        }
        return dark;
    }
}
