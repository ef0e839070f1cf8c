package limbway.model.energy;

/**
 * A rope hung between two fixed ends, loaded at one place, which it draws into two straight parts.
 *
 * <p>A load P at mid-span is carried by the two halves, each at the slope {@code 2 sag / span}: tension
 * {@code P L / (4 sag)}, stretch {@code T (L/2) / (E A)} of each half, which lowers the middle by the stretch over the
 * sine of the slope. So {@code k = 16 E A (sag/span)² / L} in the middle, and nearer the ends, at a share s of the span,
 * {@code k / (4 s (1 - s))}.
 *
 * @source statics of a light cable under one load, textbook; the slope is taken as small
 * @validity a rope that hangs in its sag before the load comes; what it drops while the load draws it straight is left out
 */
public final class SaggingRope {

    /** A tighter rope than this share of its span is counted as sagging so much: the load itself makes a sag. */
    private static final double LEAST_SAG_SHARE = 0.02;

    private SaggingRope() {}

    /**
     * Stiffness against a load at one place.
     *
     * @param spanM distance between the ends [m], above 0
     * @param sagM how far the middle hangs below the straight line [m], 0 or more
     * @param diameterM thickness [m], above 0
     * @param youngPa stiffness of the rope's stuff over its full round section [Pa], above 0
     * @param share where the load is, as a share of the span, above 0 and below 1
     * @return stiffness [N/m]
     * @throws IllegalArgumentException naming the value outside its range
     */
    public static double stiffnessNPerM(double spanM, double sagM, double diameterM, double youngPa, double share) {
        Allowed.aboveZero("rope", "spanM", spanM);
        Allowed.aboveZero("rope", "diameterM", diameterM);
        Allowed.aboveZero("rope", "youngPa", youngPa);
        double sagShare = Math.max(LEAST_SAG_SHARE, sagM / spanM);
        double stretchN = youngPa * Math.PI * diameterM * diameterM / 4;
        double middle = 16 * stretchN * sagShare * sagShare / spanM;
        return middle / (4 * share * (1 - share));
    }
}
