package limbway.sim.animal;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.ParameterGroup;
import limbway.model.parameter.Standing;

/**
 * How needs grow, and how much they press.
 *
 * @param hungerScale share of the daily energy need that is missing when hunger is greatest
 * @param thirstScale share of the daily water need that is missing when thirst is greatest
 * @param waterMlPerKg water lost in a day, per kilogram of body mass [ml/kg]
 * @param hungerWeight how much hunger counts
 * @param thirstWeight how much thirst counts
 * @param fatigueWeight how much fatigue counts
 * @param tiringMin time in which an active animal tires by 63 % [min]
 * @param recoveryMin time in which a resting animal recovers by 63 % [min]
 * @param otherActivity share of the day's energy above rest that is spent evenly while awake, on all that is not moving about
 */
public record NeedSettings(
        double hungerScale,
        double thirstScale,
        double waterMlPerKg,
        double hungerWeight,
        double thirstWeight,
        double fatigueWeight,
        double tiringMin,
        double recoveryMin,
        double otherActivity) {

    /** What the numbers are. */
    public static final ParameterGroup<NeedSettings> GROUP = ParameterGroup.of(
            NeedSettings.class,
            new Parameter(
                    "need.hunger-scale",
                    "share of the daily energy need that is missing when hunger is greatest",
                    "1",
                    0.25,
                    0.1,
                    0.5,
                    Standing.ASSUMPTION,
                    "no source; a quarter of the need is missing after about nine hours at rest"),
            new Parameter(
                    "need.thirst-scale",
                    "share of the daily water need that is missing when thirst is greatest",
                    "1",
                    0.3,
                    0.1,
                    0.5,
                    Standing.ASSUMPTION,
                    "no source"),
            new Parameter(
                    "need.water",
                    "water lost in a day, per kilogram of body mass",
                    "ml/kg",
                    40,
                    20,
                    80,
                    Standing.ASSUMPTION,
                    "common practice for mammals at rest, no source"),
            new Parameter(
                    "need.hunger-weight",
                    "how much hunger counts",
                    "1",
                    1,
                    0.3,
                    2,
                    Standing.ASSUMPTION,
                    "no source; the unit of the other weights"),
            new Parameter(
                    "need.thirst-weight", "how much thirst counts", "1", 1, 0.3, 2, Standing.ASSUMPTION, "no source"),
            new Parameter(
                    "need.fatigue-weight",
                    "how much fatigue counts",
                    "1",
                    0.6,
                    0.3,
                    2,
                    Standing.ASSUMPTION,
                    "no source; to be tuned to the share of the day that animals rest"),
            new Parameter(
                    "need.tiring",
                    "time in which an active animal tires by 63 %",
                    "min",
                    240,
                    120,
                    480,
                    Standing.ASSUMPTION,
                    "no source; to be tuned to the share of the day that animals rest"),
            new Parameter(
                    "need.recovery",
                    "time in which a resting animal recovers by 63 %",
                    "min",
                    60,
                    30,
                    120,
                    Standing.ASSUMPTION,
                    "no source; to be tuned to the share of the day that animals rest"),
            new Parameter(
                    "need.other-activity",
                    "share of the day's energy above rest that is spent evenly while awake, on handling, play and keeping warm",
                    "1",
                    0.9,
                    0.5,
                    1,
                    Standing.ASSUMPTION,
                    "moving about takes 1 to 6 % of the daily budget of mammals (second-hand), about a tenth of what lies above rest"));
}
