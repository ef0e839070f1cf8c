package limbway.reports.command;

import java.util.ArrayList;
import java.util.List;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.energy.EnergySettings;
import limbway.model.graph.GraphSettings;
import limbway.model.heat.HeatSettings;
import limbway.model.heat.SurfaceCatalogue;
import limbway.model.parameter.Parameter;
import limbway.model.route.ChoiceSharpness;
import limbway.model.shade.ShadeSettings;
import limbway.model.shade.ShadeYear;
import limbway.model.weather.MonthlyWeather;
import limbway.reports.measure.ElevatedTime;
import limbway.sim.animal.DaySettings;

/** Every number that takes part in a run. */
final class UsedParameters {

    private UsedParameters() {}

    static List<Parameter> of(Question question, double thresholdM) {
        List<Parameter> all = new ArrayList<>(question.parametersOfScenario());
        for (Parameter parameter : BodyCatalogue.standard().parameters()) {
            if (isUsed(parameter.name(), question.study().bodies())) {
                all.add(parameter);
            }
        }
        all.addAll(EnergySettings.standard().parameters());
        all.addAll(GraphSettings.forBodies(question.study().bodies()).parameters());
        all.addAll(ChoiceSharpness.GROUP.of(ChoiceSharpness.GROUP.standard()));
        all.addAll(DaySettings.standard().parameters());
        if (question.study().climate().isPresent()) {
            all.addAll(ShadeSettings.standard().parameters());
            all.addAll(HeatSettings.standard().parameters());
        }
        all.addAll(ofWeather(question));
        all.add(ElevatedTime.parameter(thresholdM));
        return all;
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
