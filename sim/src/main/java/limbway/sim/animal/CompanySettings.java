package limbway.sim.animal;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.ParameterGroup;
import limbway.model.parameter.Standing;

/**
 * How animals contend for a stall.
 *
 * @param contestSharpness how strictly the stronger wins; 0 is a lottery
 * @param hungerInContest how much hunger adds to strength
 */
public record CompanySettings(double contestSharpness, double hungerInContest) {

    /** What the numbers are. */
    public static final ParameterGroup<CompanySettings> GROUP = ParameterGroup.of(
            CompanySettings.class,
            new Parameter(
                    "company.contest-sharpness",
                    "how strictly the stronger of two wins a stall; 0 is a lottery",
                    "1",
                    4,
                    0,
                    20,
                    Standing.ASSUMPTION,
                    "no source"),
            new Parameter(
                    "company.hunger-in-contest",
                    "how much the greatest hunger adds to a rank from 0 to 1 in a contest",
                    "1",
                    0.2,
                    0,
                    1,
                    Standing.ASSUMPTION,
                    "no source; hungry animals invest more in a contest"));
}
