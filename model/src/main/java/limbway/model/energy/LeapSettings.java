package limbway.model.energy;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.ParameterGroup;
import limbway.model.parameter.Standing;

/**
 * The uncertain numbers of leaping and dropping.
 *
 * @param angleDeg angle of take-off above the level [°]
 * @param pushOffM way over which the limbs push [m]
 * @param efficiency mechanical work over the energy spent, for the whole leap
 * @param heaviestKg heaviest body that leaps or drops [kg]
 * @param deepestDropM deepest fall taken on purpose [m]
 */
public record LeapSettings(
        double angleDeg, double pushOffM, double efficiency, double heaviestKg, double deepestDropM) {

    /** What the numbers are. */
    public static final ParameterGroup<LeapSettings> GROUP = ParameterGroup.of(
            LeapSettings.class,
            new Parameter(
                    "leap.angle",
                    "angle of take-off",
                    "°",
                    45,
                    30,
                    60,
                    Standing.ASSUMPTION,
                    "the best angle over a level gap"),
            new Parameter(
                    "leap.push-off",
                    "way over which the limbs push",
                    "m",
                    0.5,
                    0.4,
                    0.8,
                    Standing.ASSUMPTION,
                    "about the length of a bent limb; no measurement was found"),
            new Parameter(
                    "leap.efficiency",
                    "work of a leap over the energy spent on it",
                    "1",
                    0.14,
                    0.12,
                    0.25,
                    Standing.DERIVED,
                    "humans jumping 1.8 m on firm ground, 141.6 ml of oxygen a metre (Coward and Halsey 2014, Biol. "
                            + "Open 3:815-820, abstract), net of rest, for an assumed 70 kg"),
            new Parameter(
                    "leap.heaviest",
                    "heaviest body that leaps or drops",
                    "kg",
                    50,
                    30,
                    80,
                    Standing.ASSUMPTION,
                    "heavier animals need a stiffer tree before a jump is worth it (conference report of 2012, "
                            + "secondary); the figure has no source"),
            new Parameter(
                    "leap.deepest-drop",
                    "deepest fall taken on purpose",
                    "m",
                    2,
                    1,
                    4,
                    Standing.ASSUMPTION,
                    "about one body with raised arms; no measurement was found"));
}
