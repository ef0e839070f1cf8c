package limbway.model.strength;

import java.util.List;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/**
 * What a fibre rope holds, for a warning; not for choosing a rope.
 *
 * @param breakingMPa breaking tension over the square of the diameter [MPa], above 0; 200 is 20 kN at 10 mm
 * @param safetyFactor breaking tension over the tension taken as the limit, 1 or more
 * @param stretchShare how much longer the rope gets under the tension taken as the limit, over its length, 0 or more
 */
public record RopeStrength(double breakingMPa, double safetyFactor, double stretchShare) {

    private static final double PA_PER_MPA = 1e6;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException naming the value outside its range
     */
    public RopeStrength {
        if (!(breakingMPa > 0)) {
            throw new IllegalArgumentException("rope strength: breakingMPa = " + breakingMPa + ", allowed above 0");
        }
        if (!(safetyFactor >= 1)) {
            throw new IllegalArgumentException("rope strength: safetyFactor = " + safetyFactor + ", allowed 1 or more");
        }
        if (!(stretchShare >= 0)) {
            throw new IllegalArgumentException("rope strength: stretchShare = " + stretchShare + ", allowed 0 or more");
        }
    }

    /**
     * The defaults.
     *
     * @return polyamide rope
     */
    public static RopeStrength standard() {
        return new RopeStrength(200, 7, 0.02);
    }

    /**
     * The greatest tension before the warning.
     *
     * @param diameterM thickness of the rope [m], above 0
     * @return tension [N]
     */
    public double limitN(double diameterM) {
        return breakingMPa * PA_PER_MPA * diameterM * diameterM / safetyFactor;
    }

    /**
     * The numbers as parameters.
     *
     * @return one parameter for each component
     */
    public List<Parameter> parameters() {
        return List.of(
                new Parameter(
                        "strength.rope",
                        "breaking tension of fibre rope over the square of its diameter",
                        "MPa",
                        breakingMPa,
                        60,
                        250,
                        Standing.UNVERIFIED,
                        "polyamide, about 20 kN at 10 mm (EN ISO 1140, from memory); natural fibre a third of it"),
                new Parameter(
                        "strength.rope-safety-factor",
                        "breaking tension over the tension taken as limit",
                        "1",
                        safetyFactor,
                        5,
                        12,
                        Standing.ASSUMPTION,
                        "common practice for fibre rope, no source: knots, sun and wear take half and more"),
                new Parameter(
                        "strength.rope-stretch",
                        "stretch of a rope under the tension taken as limit, over its length",
                        "1",
                        stretchShare,
                        0,
                        0.1,
                        Standing.ASSUMPTION,
                        "less than fibre rope shows, so that a tight rope is rather warned of than not"));
    }
}
