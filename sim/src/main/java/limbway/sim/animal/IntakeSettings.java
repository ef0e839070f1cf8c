package limbway.sim.animal;

import java.util.List;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/**
 * How food and water are taken.
 *
 * @param portionKj food taken in hand at once [kJ]
 * @param eatingKjPerMin speed of eating of an animal of 40 kg; others by mass to the power 0.75 [kJ/min]
 * @param drinkingMlPerMin speed of drinking [ml/min]
 * @param barredMin how long an animal keeps away from a place whose stalls were all taken [min]
 */
public record IntakeSettings(double portionKj, double eatingKjPerMin, double drinkingMlPerMin, double barredMin) {

    /**
     * The defaults.
     *
     * @return the group with every parameter at its default
     */
    public static IntakeSettings standard() {
        return new IntakeSettings(400, 40, 250, 15);
    }

    /**
     * The group as parameters.
     *
     * @return one parameter for each component
     */
    public List<Parameter> parameters() {
        return List.of(
                new Parameter(
                        "intake.portion",
                        "food taken in hand at once",
                        "kJ",
                        portionKj,
                        100,
                        1000,
                        Standing.ASSUMPTION,
                        "no source; about four bananas"),
                new Parameter(
                        "intake.eating",
                        "speed of eating of an animal of 40 kg; others by mass to the power 0.75",
                        "kJ/min",
                        eatingKjPerMin,
                        15,
                        80,
                        Standing.ASSUMPTION,
                        "no source; the day's food is then eaten in one to two hours"),
                new Parameter(
                        "intake.drinking",
                        "speed of drinking",
                        "ml/min",
                        drinkingMlPerMin,
                        100,
                        500,
                        Standing.ASSUMPTION,
                        "no source"),
                new Parameter(
                        "intake.barred",
                        "how long an animal keeps away from a place whose stalls were all taken",
                        "min",
                        barredMin,
                        5,
                        60,
                        Standing.ASSUMPTION,
                        "no source"));
    }
}
