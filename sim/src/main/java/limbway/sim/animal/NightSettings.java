package limbway.sim.animal;

import java.util.List;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/**
 * When an animal leaves its nest, and when it goes back.
 *
 * @param wakeBeforeSunriseMin time before sunrise at which it leaves the nest [min]
 * @param settledBeforeSunsetMin time before sunset at which it has reached its nest [min]
 */
public record NightSettings(double wakeBeforeSunriseMin, double settledBeforeSunsetMin) {

    /**
     * The defaults.
     *
     * @return the group with every parameter at its default
     */
    public static NightSettings standard() {
        return new NightSettings(30, 30);
    }

    /**
     * The group as parameters.
     *
     * @return one parameter for each component
     */
    public List<Parameter> parameters() {
        return List.of(
                new Parameter(
                        "night.wake-before-sunrise",
                        "time before sunrise at which it leaves the nest",
                        "min",
                        wakeBeforeSunriseMin,
                        0,
                        60,
                        Standing.UNVERIFIED,
                        "MacKinnon 1974, wild orangutans, as reported second-hand: about 30 min before sunrise"),
                new Parameter(
                        "night.settled-before-sunset",
                        "time before sunset at which it has reached its nest",
                        "min",
                        settledBeforeSunsetMin,
                        0,
                        180,
                        Standing.ASSUMPTION,
                        "night rest of wild orangutans begins between 15:00 and 18:00 (second-hand); housed animals were not found timed"));
    }
}
