package limbway.model.energy;

/**
 * Stiffness of a level round beam pressed down in the middle.
 *
 * @source Euler-Bernoulli beam, textbook: {@code 48 E I / L³} where both ends rest, {@code 192 E I / L³} where both are
 *     built in
 * @validity small deflections of a slender, uniform beam; real joints lie between the two
 */
public final class BeamBending {

    private BeamBending() {}

    /**
     * Both ends rest on a support and may turn.
     *
     * @param spanM distance between the ends [m], above 0
     * @param diameterM outer diameter [m], above 0
     * @param elasticity stuff and section
     * @return stiffness at mid-span [N/m]
     */
    public static double restingNPerM(double spanM, double diameterM, Elasticity elasticity) {
        return 48 * perCube(spanM, diameterM, elasticity);
    }

    /**
     * Both ends are built in and cannot turn.
     *
     * @param spanM distance between the ends [m], above 0
     * @param diameterM outer diameter [m], above 0
     * @param elasticity stuff and section
     * @return stiffness at mid-span [N/m]
     */
    public static double builtInNPerM(double spanM, double diameterM, Elasticity elasticity) {
        return 192 * perCube(spanM, diameterM, elasticity);
    }

    private static double perCube(double spanM, double diameterM, Elasticity elasticity) {
        Allowed.aboveZero("beam", "spanM", spanM);
        Allowed.aboveZero("beam", "diameterM", diameterM);
        return elasticity.bendingNM2(diameterM) / (spanM * spanM * spanM);
    }
}
