package limbway.sim.animal;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.ParameterGroup;
import limbway.model.parameter.Standing;

/**
 * How food and water are taken.
 *
 * @param portionKj food taken in hand at once [kJ]
 * @param eatingKjPerMin speed of eating of an animal of 40 kg; others by mass to the power 0.75 [kJ/min]
 * @param drinkingMlPerMin speed of drinking [ml/min]
 * @param barredMin how long an animal waits for a stall, and how long it keeps away from a place where it got none [min]
 */
public record IntakeSettings(double portionKj, double eatingKjPerMin, double drinkingMlPerMin, double barredMin) {

    /** What the numbers are. */
    public static final ParameterGroup<IntakeSettings> GROUP = ParameterGroup.of(
            IntakeSettings.class,
            new Parameter(
                    "intake.portion",
                    "food taken in hand at once",
                    "kJ",
                    400,
                    100,
                    1000,
                    Standing.ASSUMPTION,
                    "no source; about four bananas"),
            new Parameter(
                    "intake.eating",
                    "speed of eating of an animal of 40 kg; others by mass to the power 0.75",
                    "kJ/min",
                    40,
                    15,
                    80,
                    Standing.ASSUMPTION,
                    "no source; the day's food is then eaten in one to two hours"),
            new Parameter(
                    "intake.drinking", "speed of drinking", "ml/min", 250, 100, 500, Standing.ASSUMPTION, "no source"),
            new Parameter(
                    "intake.barred",
                    "how long an animal waits for a stall, and how long it keeps away from a place where it got none",
                    "min",
                    15,
                    5,
                    60,
                    Standing.ASSUMPTION,
                    "no source"));

    /**
     * How long an animal waits or keeps away.
     *
     * @return time [ms], 1 or more
     */
    public long barredMs() {
        return Math.max(1, Math.round(barredMin * 60_000));
    }

    /**
     * How long a whole portion lasts an animal of 40 kg.
     *
     * @return time [ms]
     */
    public double portionMs() {
        return portionKj / eatingKjPerMin * 60_000;
    }
}
