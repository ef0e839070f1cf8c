package limbway.sim.animal;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.ParameterGroup;
import limbway.model.parameter.Standing;

/**
 * How long an animal rests by day.
 *
 * @param longestMin longest rest before it considers again [min]
 * @param shortestMin shortest rest once it has sat down [min]
 * @param restedFatigue fatigue at which it has rested enough
 * @param callingUrgency hunger or thirst at which it ends a rest
 * @param reliefElsewhere speed of recovery where it just is, over that at a resting place
 */
public record RestSettings(
        double longestMin, double shortestMin, double restedFatigue, double callingUrgency, double reliefElsewhere) {

    /** What the numbers are. */
    public static final ParameterGroup<RestSettings> GROUP = ParameterGroup.of(
            RestSettings.class,
            new Parameter(
                    "rest.longest",
                    "longest rest before it considers again",
                    "min",
                    90,
                    30,
                    180,
                    Standing.ASSUMPTION,
                    "no source"),
            new Parameter(
                    "rest.shortest",
                    "shortest rest once it has sat down",
                    "min",
                    5,
                    1,
                    15,
                    Standing.ASSUMPTION,
                    "no source"),
            new Parameter(
                    "rest.rested-fatigue",
                    "fatigue at which it has rested enough",
                    "1",
                    0.15,
                    0.05,
                    0.4,
                    Standing.ASSUMPTION,
                    "no source"),
            new Parameter(
                    "rest.calling-urgency",
                    "hunger or thirst at which it ends a rest",
                    "1",
                    0.5,
                    0.2,
                    0.9,
                    Standing.ASSUMPTION,
                    "no source"),
            new Parameter(
                    "rest.relief-elsewhere",
                    "speed of recovery where it just is, over that at a resting place",
                    "1",
                    0.5,
                    0.2,
                    1,
                    Standing.ASSUMPTION,
                    "no source"));
}
