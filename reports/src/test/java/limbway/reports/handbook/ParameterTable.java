package limbway.reports.handbook;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.body.BodyCatalogue;
import limbway.model.energy.EnergySettings;
import limbway.model.graph.GraphSettings;
import limbway.model.heat.HeatSettings;
import limbway.model.heat.SurfaceCatalogue;
import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;
import limbway.model.route.ChoiceSharpness;
import limbway.model.shade.ShadeRule;
import limbway.model.shade.ShadeSettings;
import limbway.model.weather.MonthlyWeather;
import limbway.reports.measure.ElevatedTime;
import limbway.scenarios.entry.AnimalReader;
import limbway.scenarios.entry.FeedingReader;
import limbway.scenarios.survey.Allometry;
import limbway.sim.animal.DaySettings;

/** Renders {@code docs/parameters.md}: every parameter with its default, by the first word of its name. */
final class ParameterTable {

    private static final String INTRODUCTION = """
            # Parameters

            Every number that somebody may doubt, with its default and where it comes from. This page is written by
            `ParameterTableTest` from the code and checked by it; do not edit it by hand. The numbers used in one run stand in
            its `run.json`.

            How well a number is known is one of four words. *published*: read in the named source. *derived*: computed from
            published values as the source column says. *unverified*: from memory or a secondary page; check before relying on
            it. *assumption*: no source; a choice of this project, to be varied in any study that leans on it. The range is
            what is worth trying, not what is possible. Unit `1` is a ratio.

            Rules that are built in and not parameters (what counts as steep, as touching, as on the ground) are listed in
            [model.md](model.md#the-compiler).
            """;

    private static final String HEADER = """
            | name | meaning | unit | default | range | standing | source | what it moves |
            |---|---|---|---|---|---|---|---|
            """;

    private ParameterTable() {}

    /** Every parameter that a run can list, at its default. */
    static List<Parameter> parameters() {
        BodyCatalogue bodies = BodyCatalogue.standard();
        List<Parameter> all = new ArrayList<>(bodies.parameters());
        all.add(AnimalReader.INFANT_MASS);
        all.add(FeedingReader.USUAL_HANDLING);
        all.addAll(EnergySettings.standard().parameters());
        all.addAll(GraphSettings.forBodies(List.of(bodies.find("adult female").orElseThrow()))
                .parameters());
        all.addAll(ChoiceSharpness.GROUP.of(ChoiceSharpness.GROUP.standard()));
        all.addAll(DaySettings.standard().parameters());
        all.addAll(ShadeRule.standard().parameters());
        all.addAll(ShadeSettings.standard().parameters());
        all.addAll(HeatSettings.standard().parameters());
        all.addAll(SurfaceCatalogue.parameters());
        all.addAll(new MonthlyWeather(
                        Collections.nCopies(12, 0.0),
                        Collections.nCopies(12, 0.0),
                        MonthlyWeather.UNSTATED_WIND_M_PER_S,
                        MonthlyWeather.UNSTATED_LINKE_TURBIDITY)
                .parameters());
        all.addAll(Allometry.with(Map.of()).parameters(coefficient -> true));
        all.add(ElevatedTime.parameter(ElevatedTime.STANDARD_THRESHOLD_M));
        return all;
    }

    /** The page. */
    static String render() {
        Map<String, List<Parameter>> groups = new LinkedHashMap<>();
        for (Parameter parameter : parameters()) {
            groups.computeIfAbsent(group(parameter), name -> new ArrayList<>()).add(parameter);
        }
        StringBuilder page = new StringBuilder(INTRODUCTION);
        page.append("\n").append(counts());
        groups.forEach((name, members) -> {
            page.append("\n## `").append(name).append("`\n\n").append(HEADER);
            members.forEach(parameter -> page.append(row(parameter)));
        });
        return page.toString();
    }

    private static String counts() {
        List<String> parts = new ArrayList<>();
        for (Standing standing : Standing.values()) {
            long count =
                    parameters().stream().filter(p -> p.standing() == standing).count();
            parts.add(count + " " + standing.word());
        }
        return "Of " + parameters().size() + " parameters, " + String.join(", ", parts) + ".\n";
    }

    private static String group(Parameter parameter) {
        String[] words = parameter.name().split("\\.", -1);
        return words.length > 2 ? words[0] + "." + words[1] : words[0];
    }

    private static String row(Parameter p) {
        return "| "
                + String.join(
                        " | ",
                        "`" + p.name() + "`",
                        p.meaning(),
                        p.unit(),
                        number(p.value()),
                        number(p.low()) + " to " + number(p.high()),
                        p.standing().word(),
                        p.source().replace("|", "\\|"),
                        Effect.of(p))
                + " |\n";
    }

    private static String number(double value) {
        BigDecimal exact = BigDecimal.valueOf(value).stripTrailingZeros();
        return exact.toPlainString();
    }
}
