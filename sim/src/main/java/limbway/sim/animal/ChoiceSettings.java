package limbway.sim.animal;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.ParameterGroup;
import limbway.model.parameter.Standing;

/**
 * How places are weighed against each other.
 *
 * @param patienceMin travel time that lowers the worth of a place by 63 % [min]
 * @param effortWeight how much energy spent on the way counts against energy that is missing
 * @param noise spread of what draws an animal to a place beyond its needs
 * @param persistence how much staying counts over leaving
 * @param leastRelief least part of a need that a place must promise to be gone to
 */
public record ChoiceSettings(
        double patienceMin, double effortWeight, double noise, double persistence, double leastRelief) {

    /** What the numbers are. */
    public static final ParameterGroup<ChoiceSettings> GROUP = ParameterGroup.of(
            ChoiceSettings.class,
            new Parameter(
                    "choice.patience",
                    "travel time that lowers the worth of a place by 63 %",
                    "min",
                    120,
                    30,
                    1440,
                    Standing.ASSUMPTION,
                    "no source"),
            new Parameter(
                    "choice.effort-weight",
                    "how much energy spent on the way counts against energy that is missing",
                    "1",
                    1,
                    0.3,
                    3,
                    Standing.ASSUMPTION,
                    "energy spent makes hunger, so one currency: 1"),
            new Parameter(
                    "choice.noise",
                    "spread of what draws an animal to a place beyond its needs",
                    "1",
                    0.05,
                    0.01,
                    0.3,
                    Standing.ASSUMPTION,
                    "a place better by 0.11 is taken nine times in ten: 0.11 / ln 9"),
            new Parameter(
                    "choice.persistence",
                    "how much staying counts over leaving",
                    "1",
                    0.02,
                    0,
                    0.1,
                    Standing.ASSUMPTION,
                    "no source; keeps animals from going to and fro"),
            new Parameter(
                    "choice.least-relief",
                    "least part of a need that a place must promise to be gone to",
                    "1",
                    0.1,
                    0,
                    0.3,
                    Standing.ASSUMPTION,
                    "no source; a place that promises nothing is not gone to"));
}
