package limbway.model.strength;

/**
 * A stretch of a round, evenly tapering member along which the bending moment grows evenly from 0.
 *
 * <p>The stress grows as {@code u / d(u)³}, with {@code d(u) = d + g u} at the distance u from where the moment is 0. Its
 * slope has the sign of {@code d - 2 g u}: the stress is greatest at {@code u = d / (2 g)}, where the member is half as
 * thick again, or at the end of the stretch if that comes first.
 *
 * @param diameterM thickness where the moment is 0 [m], above 0
 * @param growth how much it gets thicker for each metre away from there; negative where it gets thinner
 * @param lengthM length of the stretch [m], above 0
 */
record Lever(double diameterM, double growth, double lengthM) {

    /** Where the stress is greatest, from where the moment is 0 [m]. */
    double weakestM() {
        return growth > 0 ? Math.min(lengthM, diameterM / (2 * growth)) : lengthM;
    }

    /**
     * The force where the moment is 0 that brings the weakest place of a solid member to a stress, its arm taken along
     * the member: {@code stress pi d³ / (32 u)} [N].
     */
    double forceN(double stressPa) {
        double thickM = diameterM + growth * weakestM();
        return stressPa * Math.PI * thickM * thickM * thickM / (32 * weakestM());
    }
}
