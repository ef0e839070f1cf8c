package limbway.sim.animal;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.ParameterGroup;
import limbway.model.parameter.Standing;

/**
 * When an animal leaves its nest, and when it goes back.
 *
 * @param wakeBeforeSunriseMin time before sunrise at which it leaves the nest [min]
 * @param settledBeforeSunsetMin time before sunset at which it has built its nest and lies in it [min]
 * @param nestBuildingMin time that an animal builds at its nest before it lies down in it [min]
 */
public record NightSettings(double wakeBeforeSunriseMin, double settledBeforeSunsetMin, double nestBuildingMin) {

    /** What the numbers are. */
    public static final ParameterGroup<NightSettings> GROUP = ParameterGroup.of(
            NightSettings.class,
            new Parameter(
                    "night.wake-before-sunrise",
                    "time before sunrise at which it leaves the nest",
                    "min",
                    30,
                    0,
                    60,
                    Standing.UNVERIFIED,
                    "MacKinnon 1974, wild orangutans, as reported second-hand: about 30 min before sunrise"),
            new Parameter(
                    "night.settled-before-sunset",
                    "time before sunset at which it has built its nest and lies in it",
                    "min",
                    30,
                    0,
                    180,
                    Standing.ASSUMPTION,
                    "night rest of wild orangutans begins between 15:00 and 18:00 (second-hand); housed animals were not found timed"),
            new Parameter(
                    "night.nest-building",
                    "time that an animal builds at its nest before it lies down in it",
                    "min",
                    10,
                    2,
                    20,
                    Standing.PUBLISHED,
                    "Samson and Shumaker 2015, doi 10.1159/000381056, five housed orangutans: 10.1 min, standard deviation 9.9; wild ones 2 to 3 min (second-hand)"));
}
