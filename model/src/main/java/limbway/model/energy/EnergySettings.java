package limbway.model.energy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/**
 * The uncertain numbers of the energy model.
 *
 * @param clamberMultiplier cost of clambering over walking the same level distance
 * @param bridgeMultiplier cost of bridging a gap over walking the same level distance
 * @param swingMultiplier cost of arm-swinging over walking the same level distance
 * @param dailyOverResting daily expenditure over resting expenditure
 * @param compliance what it costs that supports give way
 * @param sway how poles are swung
 * @param leap how gaps are leaped and drops taken
 */
public record EnergySettings(
        double clamberMultiplier,
        double bridgeMultiplier,
        double swingMultiplier,
        double dailyOverResting,
        ComplianceSettings compliance,
        SwaySettings sway,
        LeapSettings leap) {

    /**
     * The defaults.
     *
     * @return settings with every parameter at its default
     */
    public static EnergySettings standard() {
        return new EnergySettings(
                2.0,
                2.0,
                SwingCost.MULTIPLIER.value(),
                1.6,
                ComplianceSettings.GROUP.standard(),
                SwaySettings.GROUP.standard(),
                LeapSettings.GROUP.standard());
    }

    /**
     * The settings as parameters.
     *
     * @return the multipliers, then those of compliance, sway and leap
     */
    public List<Parameter> parameters() {
        List<Parameter> all = new ArrayList<>(multipliers());
        all.addAll(ComplianceSettings.GROUP.of(compliance));
        all.addAll(SwaySettings.GROUP.of(sway));
        all.addAll(LeapSettings.GROUP.of(leap));
        return all;
    }

    /**
     * The same settings with some numbers changed.
     *
     * @param values new values by the names of parameters; names that are none of these are passed over
     * @return a changed copy
     */
    public EnergySettings with(Map<String, Double> values) {
        double[] used = multipliers().stream()
                .mapToDouble(p -> values.getOrDefault(p.name(), p.value()))
                .toArray();
        return new EnergySettings(
                used[0],
                used[1],
                used[2],
                used[3],
                ComplianceSettings.GROUP.with(compliance, values),
                SwaySettings.GROUP.with(sway, values),
                LeapSettings.GROUP.with(leap, values));
    }

    private List<Parameter> multipliers() {
        return List.of(
                new Parameter(
                        "energy.clamber-multiplier",
                        "clambering over walking, per level metre",
                        "1",
                        clamberMultiplier,
                        1.5,
                        4,
                        Standing.DERIVED,
                        "Elton, Foley and Ulijaszek 1998, doi 10.1080/03014469800006762: 29 humans climbing and clambering "
                                + "spent 2.0 times the power of walking; no ape was measured"),
                new Parameter(
                        "energy.bridge-multiplier",
                        "reaching over a gap over walking, per level metre",
                        "1",
                        bridgeMultiplier,
                        1.5,
                        4,
                        Standing.ASSUMPTION,
                        "taken as clambering; no measurement was found"),
                SwingCost.MULTIPLIER.withValue(swingMultiplier),
                new Parameter(
                        "energy.daily-over-resting",
                        "daily expenditure over resting expenditure",
                        "1",
                        dailyOverResting,
                        1.3,
                        2.0,
                        Standing.ASSUMPTION,
                        "the measured resting rate of Pontzer et al. 2010 was not recovered"));
    }
}
