package limbway.model.energy;

/**
 * How a bending member resists: the stuff and how much of its section is filled.
 *
 * @param youngPa Young's modulus along the member [Pa], above 0
 * @param densityKgPerM3 density of the stuff [kg/m³], above 0
 * @param innerShare inner over outer diameter, 0 for a solid member, below 1 for a tube
 */
public record Elasticity(double youngPa, double densityKgPerM3, double innerShare) {

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException naming the value outside its range
     */
    public Elasticity {
        Allowed.aboveZero("elasticity", "youngPa", youngPa);
        Allowed.aboveZero("elasticity", "densityKgPerM3", densityKgPerM3);
        if (!(innerShare >= 0 && innerShare < 1)) {
            throw new IllegalArgumentException(
                    "elasticity: innerShare = " + innerShare + ", allowed 0 or more and below 1");
        }
    }

    /**
     * The bending stiffness of a round section.
     *
     * @param diameterM outer diameter [m], above 0
     * @return Young's modulus times second moment of area, {@code E pi d^4 (1 - share^4) / 64} [N m²]
     */
    public double bendingNM2(double diameterM) {
        double hollow = innerShare * innerShare * innerShare * innerShare;
        return youngPa * Math.PI * diameterM * diameterM * diameterM * diameterM * (1 - hollow) / 64;
    }
}
