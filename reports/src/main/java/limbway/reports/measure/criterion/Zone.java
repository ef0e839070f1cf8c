package limbway.reports.measure.criterion;

import limbway.model.volume.ReachedRoom;

/**
 * The zones over which use of space is counted: the ground, and what stands on it in layers of two metres. They are the
 * same for every layout; only their sizes differ. A support cut in two is in the same zones as before.
 */
enum Zone {
    /** On the ground itself; its size is the room that is within reach from the ground only. */
    GROUND(0),
    /** Off the ground, below two metres. */
    LOW(2),
    /** From two to four metres. */
    MIDDLE(4),
    /** From four to six metres. */
    HIGH(6),
    /** Six metres and more. */
    TOP(Double.POSITIVE_INFINITY);

    private final double belowM;

    Zone(double belowM) {
        this.belowM = belowM;
    }

    /** Upper edge above level 0 [m]. */
    double belowM() {
        return belowM;
    }

    /** Lower edge above level 0 [m], of the low zone minus infinity. */
    double fromM() {
        return this == LOW || this == GROUND ? Double.NEGATIVE_INFINITY : values()[ordinal() - 1].belowM;
    }

    /** Room in each zone that a body reaches [m³], by ordinal. */
    static double[] sizesM3(ReachedRoom room) {
        double[] sizes = new double[values().length];
        double whole = room.offGroundM3();
        sizes[GROUND.ordinal()] = Math.max(0, room.m3() - whole);
        double below = 0;
        for (Zone zone : values()) {
            if (zone != GROUND) {
                double upTo = zone == TOP ? whole : room.offGroundM3(zone.belowM);
                sizes[zone.ordinal()] = Math.max(0, upTo - below);
                below = upTo;
            }
        }
        return sizes;
    }
}
