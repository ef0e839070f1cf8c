package limbway.model.body;

/**
 * What one kind of animal weighs, reaches and grips.
 *
 * <p>The speeds are needed for the time a trip takes; the energies do not depend on them.
 *
 * @param name age-sex class, for example {@code adult female}
 * @param massKg mass that moves, a carried infant included [kg]
 * @param structuralMassKg mass to design structures for: the captive maximum [kg]
 * @param gapReachM widest gap crossed by reaching over, surface to surface [m]
 * @param overheadReachM reach of a standing animal above its feet [m]
 * @param gripDiameterM thickest support that a hand or foot hooks round [m]
 * @param hugDiameterM thickest rough stem that both arms hold by friction [m]
 * @param walkwayDiameterM thinnest beam broad enough to walk on [m]
 * @param speeds how fast it moves
 */
public record Body(
        String name,
        double massKg,
        double structuralMassKg,
        double gapReachM,
        double overheadReachM,
        double gripDiameterM,
        double hugDiameterM,
        double walkwayDiameterM,
        Speeds speeds) {

    /**
     * Checks that every measure is above 0.
     *
     * @throws IllegalArgumentException naming the body and the measure
     */
    public Body {
        requireAboveZero(name, "massKg", massKg);
        requireAboveZero(name, "structuralMassKg", structuralMassKg);
        requireAboveZero(name, "gapReachM", gapReachM);
        requireAboveZero(name, "overheadReachM", overheadReachM);
        requireAboveZero(name, "gripDiameterM", gripDiameterM);
        requireAboveZero(name, "hugDiameterM", hugDiameterM);
        requireAboveZero(name, "walkwayDiameterM", walkwayDiameterM);
    }

    /**
     * The same body carrying an infant: the mass is added; reach and gait stay.
     *
     * @param infantKg mass of the infant [kg], above 0
     * @return a body named with "and infant"
     * @source Mothers with infants climb with the same gait: Isler and Thorpe 2003, doi 10.1242/jeb.00651
     */
    public Body carrying(double infantKg) {
        return new Body(
                name + " and infant",
                massKg + infantKg,
                structuralMassKg + infantKg,
                gapReachM,
                overheadReachM,
                gripDiameterM,
                hugDiameterM,
                walkwayDiameterM,
                speeds);
    }

    /**
     * The same body with another mass that moves.
     *
     * @param newMassKg mass [kg], above 0
     * @return a body named with its mass
     */
    public Body weighing(double newMassKg) {
        String shown = newMassKg == Math.rint(newMassKg) ? Long.toString((long) newMassKg) : Double.toString(newMassKg);
        return new Body(
                name + " of " + shown + " kg",
                newMassKg,
                Math.max(structuralMassKg, newMassKg),
                gapReachM,
                overheadReachM,
                gripDiameterM,
                hugDiameterM,
                walkwayDiameterM,
                speeds);
    }

    private static void requireAboveZero(String body, String measure, double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(
                    "body \"" + body + "\": " + measure + " = " + value + ", allowed above 0");
        }
    }
}
