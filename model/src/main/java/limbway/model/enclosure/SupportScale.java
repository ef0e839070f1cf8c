package limbway.model.enclosure;

import limbway.model.geometry.Point;
import limbway.model.geometry.Terrain;

/**
 * The scale by which somebody says where on a support a place is: on poles and trunks the height above the ground at the foot,
 * on all others the distance from the first end.
 *
 * @param support the support
 * @param terrain the ground it stands on
 */
public record SupportScale(Support support, Terrain terrain) {

    /**
     * The place at a measure.
     *
     * @param measureM height above the ground at the foot, or distance from the first end [m]; may lie beyond an end by no more
     *     than comes of rounding
     * @return the place; at the last end that end exactly
     * @throws IllegalArgumentException if a distance is below 0
     */
    public Point at(double measureM) {
        if (!support.kind().isUpright()) {
            return support.axis().atLength(Math.min(measureM, support.axis().lengthM()));
        }
        Point foot = support.axis().start();
        Point top = support.axis().end();
        double zM = levelM(measureM);
        double share = Math.max(0, Math.min(1, (zM - foot.zM()) / (top.zM() - foot.zM())));
        return share == 1 ? top : foot.plus(top.minus(foot).times(share)).atHeight(zM);
    }

    /**
     * Whether a measure lies on the support.
     *
     * @param measureM height above the ground at the foot, or distance from the first end [m]
     * @return true from one end to the other, the ends among them
     */
    public boolean has(double measureM) {
        if (!support.kind().isUpright()) {
            return measureM >= 0 && measureM <= support.axis().lengthM();
        }
        double zM = levelM(measureM);
        return zM >= support.axis().start().zM() && zM <= support.axis().end().zM();
    }

    /**
     * The measure of a place.
     *
     * @param near a place on the support, or near it
     * @return its height above the ground at the foot, or the distance from the first end to what is nearest to it [m]
     */
    public double measureM(Point near) {
        return support.kind().isUpright()
                ? near.zM() - groundM()
                : support.axis().alongM(near);
    }

    /**
     * Where a height above the ground at the foot is.
     *
     * @param heightM height [m]
     * @return height in the coordinates of the enclosure [m]
     */
    public double levelM(double heightM) {
        return groundM() + heightM;
    }

    /**
     * The ground at the foot.
     *
     * @return height of the ground [m]
     */
    public double groundM() {
        Point foot = support.axis().start();
        return terrain.heightM(foot.xM(), foot.yM());
    }
}
