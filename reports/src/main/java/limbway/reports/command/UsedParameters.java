package limbway.reports.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.graph.GraphSettings;
import limbway.model.heat.HeatSettings;
import limbway.model.heat.SurfaceCatalogue;
import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;
import limbway.model.route.ChoiceSharpness;
import limbway.model.shade.ShadeSettings;
import limbway.model.shade.ShadeYear;
import limbway.model.weather.MonthlyWeather;
import limbway.reports.measure.ElevatedTime;
import limbway.reports.words.Figures;
import limbway.sim.experiment.Assumptions;

/** Every number that takes part in a run. */
final class UsedParameters {

    private UsedParameters() {}

    static List<Parameter> of(Question question, Assumptions assumptions, double thresholdM) {
        List<Parameter> all = new ArrayList<>(question.parametersOfScenario());
        for (Parameter parameter : BodyCatalogue.standard().parameters()) {
            if (isUsed(parameter.name(), question.study().bodies())) {
                all.add(parameter);
            }
        }
        all.addAll(assumptions.energy().parameters());
        all.addAll(GraphSettings.forBodies(question.study().bodies()).parameters());
        all.addAll(ChoiceSharpness.GROUP.of(assumptions.sharpness()));
        all.addAll(assumptions.day().parameters());
        if (question.study().climate().isPresent()) {
            all.addAll(ShadeSettings.standard().parameters());
            all.addAll(HeatSettings.standard().parameters());
        }
        all.addAll(ofWeather(question));
        all.add(ElevatedTime.parameter(thresholdM));
        return marked(all, question.study().assumed());
    }

    /** Says of every number that the scenario set, that it did, and what it would be otherwise. */
    private static List<Parameter> marked(List<Parameter> all, Map<String, Double> assumed) {
        Map<String, Parameter> defaults = new TreeMap<>();
        Assumptions.standard().parameters().forEach(parameter -> defaults.put(parameter.name(), parameter));
        return all.stream()
                .map(parameter -> assumed.containsKey(parameter.name())
                        ? set(parameter, defaults.get(parameter.name()).value())
                        : parameter)
                .toList();
    }

    private static Parameter set(Parameter used, double otherwise) {
        return new Parameter(
                used.name(),
                used.meaning(),
                used.unit(),
                used.value(),
                used.low(),
                used.high(),
                Standing.ASSUMPTION,
                "set by the scenario; otherwise " + Figures.plain(otherwise) + ": " + used.source());
    }

    /** Every number that takes part in a year of shade. */
    static List<Parameter> ofShade(Question question, ShadeYear year) {
        List<Parameter> all = new ArrayList<>(question.parametersOfScenario());
        all.addAll(year.rule().parameters());
        all.addAll(ShadeSettings.standard().parameters());
        if (question.study().weather().isPresent()) {
            all.addAll(HeatSettings.standard().parameters());
            all.addAll(SurfaceCatalogue.parameters());
        }
        all.addAll(ofWeather(question));
        return all;
    }

    /** Wind and haze, where the weather was made from monthly means. */
    private static List<Parameter> ofWeather(Question question) {
        return question.study().weather().orElse(null) instanceof MonthlyWeather months
                ? months.parameters()
                : List.of();
    }

    /** Figures of bodies that are not in the group took no part. */
    private static boolean isUsed(String parameter, List<Body> bodies) {
        return !parameter.startsWith("body.")
                || bodies.stream().anyMatch(body -> ("body." + body.name().replace(' ', '-'))
                        .startsWith(parameter.substring(0, parameter.lastIndexOf('.'))));
    }
}
