package limbway.sim.experiment;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import limbway.model.energy.EnergySettings;
import limbway.model.parameter.Parameter;
import limbway.model.route.ChoiceSharpness;
import limbway.sim.animal.DaySettings;

/**
 * Every number behind a run that somebody may set by its name.
 *
 * @param energy what moves cost
 * @param sharpness how strictly the cheaper of two ways is taken
 * @param day how animals spend their day
 */
public record Assumptions(EnergySettings energy, ChoiceSharpness sharpness, DaySettings day) {

    /**
     * The defaults.
     *
     * @return every number at its default
     */
    public static Assumptions standard() {
        return new Assumptions(EnergySettings.standard(), ChoiceSharpness.GROUP.standard(), DaySettings.standard());
    }

    /**
     * The numbers.
     *
     * @return one parameter for each, with the value in use
     */
    public List<Parameter> parameters() {
        List<Parameter> all = new ArrayList<>(energy.parameters());
        all.addAll(ChoiceSharpness.GROUP.of(sharpness));
        all.addAll(day.parameters());
        return List.copyOf(all);
    }

    /**
     * The same numbers, some of them changed.
     *
     * @param values new values by the names of parameters
     * @return a changed copy
     * @throws IllegalArgumentException naming a value that is none of these parameters, or that the model refuses
     */
    public Assumptions with(Map<String, Double> values) {
        List<String> known = parameters().stream().map(Parameter::name).toList();
        for (String name : values.keySet()) {
            if (!known.contains(name)) {
                throw new IllegalArgumentException("assumptions: \"" + name + "\" is no parameter that can be set");
            }
        }
        return new Assumptions(energy.with(values), ChoiceSharpness.GROUP.with(sharpness, values), day.with(values));
    }

    /**
     * The same numbers with nothing that counts but needs and energy.
     *
     * @return a copy in which every term of worth is 0
     */
    public Assumptions withoutWorth() {
        return new Assumptions(energy, sharpness, day.withoutWorth());
    }
}
