package limbway.model.shade;

/** Something that takes light out of a ray. Knows no tree of boxes and no sun. */
interface Caster {

    /** The corners of a box around it: least x, y, z, then greatest x, y, z [m]. */
    double[] box();

    /**
     * Share of the light that comes through on the way from a point towards the sun.
     *
     * @param season state of the leaves
     */
    double through(double x, double y, double z, double dx, double dy, double dz, int season);

    /**
     * Share of the light that comes through on the way from a point to another, to the eye of somebody who looks.
     *
     * @param lengthM distance of the other point, in the direction [m]
     * @param season state of the leaves
     */
    double before(double x, double y, double z, double dx, double dy, double dz, double lengthM, int season);

    /** Whether nothing at all comes through it where it is met. */
    default boolean isOpaque() {
        return false;
    }

    /** Whether it seldom hides much of the sun, and is better looked at last. */
    default boolean isSlender() {
        return false;
    }
}
