package limbway.model.energy;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.ParameterGroup;
import limbway.model.parameter.Standing;

/**
 * The uncertain numbers of bending supports.
 *
 * @param loadShare share of body weight that a new support takes over
 * @param efficiency mechanical work over the energy that muscle spends on it
 * @param transferM length of path for each change of support while clambering [m]
 */
public record ComplianceSettings(double loadShare, double efficiency, double transferM) {

    /** What the numbers are. */
    public static final ParameterGroup<ComplianceSettings> GROUP = ParameterGroup.of(
            ComplianceSettings.class,
            new Parameter(
                    "compliance.load-share",
                    "share of body weight taken over by the next support",
                    "1",
                    0.5,
                    0.3,
                    1,
                    Standing.ASSUMPTION,
                    "half of the limbs have moved over; no measurement was found"),
            new Parameter(
                    "compliance.efficiency",
                    "work of bending over the energy spent on it",
                    "1",
                    0.25,
                    0.20,
                    0.25,
                    Standing.UNVERIFIED,
                    "muscle that shortens: Margaria 1968, doi 10.1007/BF00699624, as reported second-hand"),
            new Parameter(
                    "compliance.transfer",
                    "path for each change of support while clambering",
                    "m",
                    1.0,
                    0.5,
                    2,
                    Standing.ASSUMPTION,
                    "about one reach; no measurement was found"));
}
