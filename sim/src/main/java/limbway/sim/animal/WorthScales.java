package limbway.sim.animal;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.ParameterGroup;
import limbway.model.parameter.Standing;

/**
 * Over what distances, heights and times the worth of a place grows or fades.
 *
 * @param fullHeightM height at which more height adds nothing [m]
 * @param edgeM distance beyond reach of the edge at which its worth has fallen by 63 % [m]
 * @param companyM distance within which an animal keeps another company [m]
 * @param dominantM distance within which a dominant is avoided [m]
 * @param strangersM distance within which animals of another group are avoided [m]
 * @param staffM distance at which the worth of staff has fallen by 63 % [m]
 * @param restlessMin time at one place in which restlessness comes 63 % of the way to its greatest [min]
 * @param familiarH time spent at a place in which it becomes 63 % familiar [h]
 * @param familiarDays time lived beside a place or way in which it becomes 63 % familiar [d]
 * @param familiarAtStart how familiar the base layout is on day 1
 * @param newAtStart how familiar what a variant adds is on day 1
 */
public record WorthScales(
        double fullHeightM,
        double edgeM,
        double companyM,
        double dominantM,
        double strangersM,
        double staffM,
        double restlessMin,
        double familiarH,
        double familiarDays,
        double familiarAtStart,
        double newAtStart) {

    /** What the numbers are. */
    public static final ParameterGroup<WorthScales> GROUP = ParameterGroup.of(
            WorthScales.class,
            new Parameter(
                    "scale.full-height",
                    "height at which more height adds nothing",
                    "m",
                    10,
                    3,
                    20,
                    Standing.ASSUMPTION,
                    "no source; wild nests begin there (second-hand)"),
            new Parameter(
                    "scale.edge",
                    "distance beyond reach of the edge at which its worth has fallen by 63 %",
                    "m",
                    2,
                    0.5,
                    5,
                    Standing.ASSUMPTION,
                    "no source"),
            new Parameter(
                    "scale.company",
                    "distance within which an animal keeps another company",
                    "m",
                    3,
                    1,
                    10,
                    Standing.ASSUMPTION,
                    "no source"),
            new Parameter(
                    "scale.dominant",
                    "distance within which a dominant is avoided",
                    "m",
                    5,
                    0,
                    15,
                    Standing.ASSUMPTION,
                    "no source"),
            new Parameter(
                    "scale.strangers",
                    "distance within which animals of another group are avoided",
                    "m",
                    10,
                    0,
                    30,
                    Standing.ASSUMPTION,
                    "no source"),
            new Parameter(
                    "scale.staff",
                    "distance at which the worth of staff has fallen by 63 %",
                    "m",
                    5,
                    1,
                    15,
                    Standing.ASSUMPTION,
                    "no source"),
            new Parameter(
                    "scale.restless",
                    "time at one place in which restlessness comes 63 % of the way to its greatest",
                    "min",
                    60,
                    15,
                    240,
                    Standing.ASSUMPTION,
                    "no source"),
            new Parameter(
                    "scale.familiar-hours",
                    "time spent at a place in which it becomes 63 % familiar",
                    "h",
                    20,
                    1,
                    100,
                    Standing.ASSUMPTION,
                    "no source; fitted to pattern 17 of validation.md"),
            new Parameter(
                    "scale.familiar-days",
                    "time lived beside a place or way in which it becomes 63 % familiar",
                    "d",
                    60,
                    7,
                    365,
                    Standing.ASSUMPTION,
                    "apes took more than half a year to explore a new habitat (Ogden et al. 1990, PMC7165752) and 28 days to settle (Finch et al. 2022, doi 10.3390/ani12162123)"),
            new Parameter(
                    "scale.familiar-at-start",
                    "how familiar what the base layout shows is on day 1",
                    "1",
                    1,
                    0,
                    1,
                    Standing.ASSUMPTION,
                    "no source; a group that has lived there for years"),
            new Parameter(
                    "scale.new-at-start",
                    "how familiar what a variant adds is on day 1",
                    "1",
                    1,
                    0,
                    1,
                    Standing.ASSUMPTION,
                    "no source; variants are compared as they are once they have been taken up"));
}
