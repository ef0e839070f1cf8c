package limbway.sim.animal;

import java.util.List;

import limbway.model.parameter.Parameter;
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
 */
public record NeedSettings(
        double hungerScale,
        double thirstScale,
        double waterMlPerKg,
        double hungerWeight,
        double thirstWeight,
        double fatigueWeight,
        double tiringMin,
        double recoveryMin) {

    /**
     * The defaults.
     *
     * @return the group with every parameter at its default
     */
    public static NeedSettings standard() {
        return new NeedSettings(0.25, 0.3, 40, 1, 1, 0.6, 240, 60);
    }

    /**
     * The group as parameters.
     *
     * @return one parameter for each component
     */
    public List<Parameter> parameters() {
        return List.of(
                new Parameter(
                        "need.hunger-scale",
                        "share of the daily energy need that is missing when hunger is greatest",
                        "1",
                        hungerScale,
                        0.1,
                        0.5,
                        Standing.ASSUMPTION,
                        "no source; a quarter of the need is missing after about nine hours at rest"),
                new Parameter(
                        "need.thirst-scale",
                        "share of the daily water need that is missing when thirst is greatest",
                        "1",
                        thirstScale,
                        0.1,
                        0.5,
                        Standing.ASSUMPTION,
                        "no source"),
                new Parameter(
                        "need.water",
                        "water lost in a day, per kilogram of body mass",
                        "ml/kg",
                        waterMlPerKg,
                        20,
                        80,
                        Standing.ASSUMPTION,
                        "common practice for mammals at rest, no source"),
                new Parameter(
                        "need.hunger-weight",
                        "how much hunger counts",
                        "1",
                        hungerWeight,
                        0.3,
                        2,
                        Standing.ASSUMPTION,
                        "no source; the unit of the other weights"),
                new Parameter(
                        "need.thirst-weight",
                        "how much thirst counts",
                        "1",
                        thirstWeight,
                        0.3,
                        2,
                        Standing.ASSUMPTION,
                        "no source"),
                new Parameter(
                        "need.fatigue-weight",
                        "how much fatigue counts",
                        "1",
                        fatigueWeight,
                        0.3,
                        2,
                        Standing.ASSUMPTION,
                        "no source; to be tuned to the share of the day that animals rest"),
                new Parameter(
                        "need.tiring",
                        "time in which an active animal tires by 63 %",
                        "min",
                        tiringMin,
                        120,
                        480,
                        Standing.ASSUMPTION,
                        "no source; to be tuned to the share of the day that animals rest"),
                new Parameter(
                        "need.recovery",
                        "time in which a resting animal recovers by 63 %",
                        "min",
                        recoveryMin,
                        30,
                        120,
                        Standing.ASSUMPTION,
                        "no source; to be tuned to the share of the day that animals rest"));
    }
}
