package limbway.model.energy;

/**
 * A round pole fixed at its base and pushed sideways at its tip; its diameter changes evenly from base to tip.
 *
 * <p>Stiffness {@code k = 3 E pi d_tip d_base³ (1 - share^4) / (64 L³)}. For a uniform pole this is the textbook
 * {@code 3 E pi d^4 / (64 L³)}; for a tapered one it is exact too, because the deflection
 * {@code F/(E I) s²} integrated along {@code d(s) = d_tip + (d_base - d_tip) s / L} has the closed form
 * {@code L³ / (3 d_tip d_base³)}.
 *
 * @param lengthM from the fixed base to where the animal holds [m], above 0
 * @param baseDiameterM outer diameter at the base [m], above 0
 * @param tipDiameterM outer diameter where the animal holds [m], above 0
 * @param elasticity stuff and section
 * @source Euler-Bernoulli beam, textbook
 * @validity small deflections of a slender pole in a rigid footing; a footing or joint that gives makes it softer. Real
 *     branches taper and fork: prefer a measured stiffness
 */
public record FlexiblePole(double lengthM, double baseDiameterM, double tipDiameterM, Elasticity elasticity) {

    /**
     * Checks that every measure is above 0.
     *
     * @throws IllegalArgumentException naming the measure
     */
    public FlexiblePole {
        Allowed.aboveZero("flexible pole", "lengthM", lengthM);
        Allowed.aboveZero("flexible pole", "baseDiameterM", baseDiameterM);
        Allowed.aboveZero("flexible pole", "tipDiameterM", tipDiameterM);
    }

    /**
     * The force for each metre that the tip moves sideways.
     *
     * @return stiffness [N/m]
     */
    public double stiffnessNPerM() {
        double atBase = elasticity.bendingNM2(baseDiameterM);
        return 3 * atBase * (tipDiameterM / baseDiameterM) / (lengthM * lengthM * lengthM);
    }

    /**
     * The mass of the pole between base and tip, as a frustum.
     *
     * @return mass [kg]
     */
    public double massKg() {
        double squares = baseDiameterM * baseDiameterM + baseDiameterM * tipDiameterM + tipDiameterM * tipDiameterM;
        double filled = 1 - elasticity.innerShare() * elasticity.innerShare();
        return elasticity.densityKgPerM3() * Math.PI * lengthM * squares * filled / 12;
    }

    /**
     * The same pole held lower down; what stands above the hand is left out.
     *
     * @param heightM where the animal holds, above the base [m], above 0, at most the length
     * @return the lower part
     * @throws IllegalArgumentException if the height is not on the pole
     */
    public FlexiblePole upTo(double heightM) {
        Allowed.between("flexible pole", "heightM", heightM, 0, lengthM);
        double diameterM = baseDiameterM + (tipDiameterM - baseDiameterM) * heightM / lengthM;
        return new FlexiblePole(heightM, baseDiameterM, diameterM, elasticity);
    }
}
