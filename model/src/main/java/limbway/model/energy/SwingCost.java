package limbway.model.energy;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/**
 * Net cost of a metre of arm-swinging below a support, walking with a surcharge on the level part:
 * {@code M [C(M, slope) + (multiplier - 1) C(M, 0) cos slope]}.
 *
 * @source multiplier from Parsons and Taylor 1977, Physiol. Zool. 50:182-188 (spider monkey; from memory); that the losses
 *     arise where a hand takes hold: Usherwood and Bertram 2003, J. Exp. Biol. 206:1631-1642 (abstract)
 * @validity continuous contact; the ricochet of a hurried gibbon, hand leaving before hand takes hold, is not in it
 */
public final class SwingCost {

    /** Cost of swinging over walking the same level distance. */
    public static final Parameter MULTIPLIER = new Parameter(
            "energy.swing-multiplier",
            "arm-swinging over walking, per level metre",
            "1",
            1.5,
            1.0,
            2.0,
            Standing.UNVERIFIED,
            "Parsons and Taylor 1977, Physiol. Zool. 50:182-188, spider monkey, from memory");

    private SwingCost() {}

    /**
     * Returns the cost per metre of path.
     *
     * @param massKg mass that moves [kg], above 0
     * @param multiplier cost over walking the same level distance, above 0
     * @param slopeDeg slope of the path, positive upwards [°], -90 to 90
     * @return cost [J/m], above 0
     * @throws IllegalArgumentException naming the value outside its range
     */
    public static double jPerM(double massKg, double multiplier, double slopeDeg) {
        Allowed.aboveZero("swing", "multiplier", multiplier);
        return ModeCost.alongJPerM(massKg, multiplier, slopeDeg);
    }
}
