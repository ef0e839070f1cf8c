package limbway.model.enclosure;

import java.util.OptionalDouble;

/**
 * How a support gives way under an animal, where a scenario says so.
 *
 * @param stiffnessNPerM measured force for each metre that it gives where it gives most [N/m], above 0; empty where it
 *     follows from length, diameter and material
 * @param bearsKg heaviest load allowed on it [kg], above 0; empty where none was stated
 * @param sways whether an animal can swing it to and fro by its own weight, because nothing else is tied to it
 */
public record Bearing(OptionalDouble stiffnessNPerM, OptionalDouble bearsKg, boolean sways) {

    /** Nothing is stated, and it does not sway. */
    public static final Bearing UNSTATED = new Bearing(OptionalDouble.empty(), OptionalDouble.empty(), false);

    /**
     * Checks that what is stated is above 0.
     *
     * @throws IllegalArgumentException naming the measure
     */
    public Bearing {
        requireAboveZero("stiffnessNPerM", stiffnessNPerM);
        requireAboveZero("bearsKg", bearsKg);
    }

    private static void requireAboveZero(String measure, OptionalDouble value) {
        if (value.isPresent() && !(value.getAsDouble() > 0)) {
            throw new IllegalArgumentException(
                    "bearing: " + measure + " = " + value.getAsDouble() + ", allowed above 0");
        }
    }
}
