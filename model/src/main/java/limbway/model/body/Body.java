package limbway.model.body;

/**
 * What one kind of animal weighs, reaches, leaps and grips.
 *
 * <p>The speeds are needed for the time a trip takes; the energies do not depend on them.
 *
 * @param name age-sex class, for example {@code adult female}
 * @param massKg mass that moves, a carried infant included [kg]
 * @param structuralMassKg mass to design structures for: the captive maximum [kg]
 * @param armSpanM from fingertip to fingertip [m]
 * @param gapReachM widest gap crossed by reaching over, surface to surface [m]
 * @param overheadReachM reach of a standing animal above its feet [m]
 * @param leapM widest gap leaped, where need be to a lower landing [m]; 0 for a body that does not leap
 * @param takeOffMPerS fastest take-off of a leap [m/s]; 0 for a body that does not leap
 * @param gripDiameterM thickest support that a hand or foot hooks round [m]
 * @param hugDiameterM thickest rough stem that both arms hold by friction [m]
 * @param walkwayDiameterM thinnest beam broad enough to walk on [m]
 * @param brachiates whether it swings hand over hand as a matter of course
 * @param speeds how fast it moves
 */
public record Body(
        String name,
        double massKg,
        double structuralMassKg,
        double armSpanM,
        double gapReachM,
        double overheadReachM,
        double leapM,
        double takeOffMPerS,
        double gripDiameterM,
        double hugDiameterM,
        double walkwayDiameterM,
        boolean brachiates,
        Speeds speeds) {

    /**
     * Checks that every measure is above 0; leap and take-off are either both 0 or both above it.
     *
     * @throws IllegalArgumentException naming the body and the measure
     */
    public Body {
        requireAboveZero(name, "massKg", massKg);
        requireAboveZero(name, "structuralMassKg", structuralMassKg);
        requireAboveZero(name, "armSpanM", armSpanM);
        requireAboveZero(name, "gapReachM", gapReachM);
        requireAboveZero(name, "overheadReachM", overheadReachM);
        requireAboveZero(name, "gripDiameterM", gripDiameterM);
        requireAboveZero(name, "hugDiameterM", hugDiameterM);
        requireAboveZero(name, "walkwayDiameterM", walkwayDiameterM);
        boolean staysPut = leapM == 0 && takeOffMPerS == 0;
        if (!staysPut && !(leapM > 0 && takeOffMPerS > 0)) {
            throw new IllegalArgumentException("body \"" + name + "\": leapM = " + leapM + ", takeOffMPerS = "
                    + takeOffMPerS + ", allowed both 0 or both above 0");
        }
    }

    /**
     * The same body carrying an infant: the mass is added; reach and gait stay.
     *
     * @param infantKg mass of the infant [kg], above 0
     * @return a body named with "and infant"
     * @source Mothers with infants climb with the same gait: Isler and Thorpe 2003, doi 10.1242/jeb.00651
     */
    public Body carrying(double infantKg) {
        return with(name + " and infant", massKg + infantKg, structuralMassKg + infantKg);
    }

    /**
     * The same body with another mass that moves.
     *
     * @param newMassKg mass [kg], above 0
     * @return a body named with its mass
     */
    public Body weighing(double newMassKg) {
        String shown = newMassKg == Math.rint(newMassKg) ? Long.toString((long) newMassKg) : Double.toString(newMassKg);
        return with(name + " of " + shown + " kg", newMassKg, Math.max(structuralMassKg, newMassKg));
    }

    /**
     * The same body, and of the same name, somewhat lighter or heavier: a mass that is not known exactly.
     *
     * @param factor new mass over the mass that moves, above 0
     * @return a copy; what structures are designed for does not shrink
     */
    public Body timesMass(double factor) {
        return factor == 1 ? this : with(name, factor * massKg, Math.max(structuralMassKg, factor * massKg));
    }

    private Body with(String newName, double newMassKg, double newStructuralMassKg) {
        return new Body(
                newName,
                newMassKg,
                newStructuralMassKg,
                armSpanM,
                gapReachM,
                overheadReachM,
                leapM,
                takeOffMPerS,
                gripDiameterM,
                hugDiameterM,
                walkwayDiameterM,
                brachiates,
                speeds);
    }

    private static void requireAboveZero(String body, String measure, double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(
                    "body \"" + body + "\": " + measure + " = " + value + ", allowed above 0");
        }
    }
}
