package limbway.reports.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import limbway.model.parameter.Parameter;
import limbway.reports.data.Json;
import limbway.reports.data.RunRecord;
import limbway.reports.measure.Movers;
import limbway.reports.measure.ScreenedAnswer;
import limbway.reports.page.ScreenReport;
import limbway.reports.page.ScreenText;
import limbway.sim.experiment.screening.Effect;

/** The machine-readable answer of a screening, and its record; effects are in percentage points. */
final class ScreenAnswer {

    private static final double POINTS = 100;

    private ScreenAnswer() {}

    static Map<String, Object> of(ScreenReport report) {
        Map<String, Object> root = report.info().record();
        root.put("trajectories", report.trajectories());
        root.put("evaluations", report.evaluations());
        root.put("redrawn_trajectories", report.redrawn());
        root.put("sentence", ScreenText.sentence(report, ScreenedAnswer.OFF_GROUND));
        for (ScreenedAnswer answer : ScreenedAnswer.values()) {
            root.put(answer.name().toLowerCase(Locale.ROOT), answer(report, answer));
        }
        root.put("parameters", RunRecord.parameters(report.info().parameters()));
        return root;
    }

    private static Map<String, Object> answer(ScreenReport report, ScreenedAnswer answer) {
        Movers movers = report.of(answer);
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("words", answer.words());
        object.put("sentence", ScreenText.sentence(report, answer));
        object.put("as_it_stands", movers.base().map(Json::interval).orElse(null));
        List<Double> tried = movers.tried();
        object.put("least_tried", tried.isEmpty() ? null : tried.get(0));
        object.put("greatest_tried", tried.isEmpty() ? null : tried.get(tried.size() - 1));
        object.put("same_sign_share", movers.sameSign());
        object.put("least_move", POINTS * movers.leastMove());
        object.put("chance", POINTS * movers.chance());
        List<Object> effects = new ArrayList<>();
        for (Effect effect : movers.effects()) {
            Parameter p = effect.factor().parameter();
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("parameter", p.name());
            one.put("meaning", p.meaning());
            one.put("unit", p.unit());
            one.put("low", p.low());
            one.put("high", p.high());
            one.put("mean", POINTS * effect.mean());
            one.put("mean_abs", POINTS * effect.meanAbsolute());
            one.put(
                    "sd",
                    effect.spread().isPresent()
                            ? (Double) (POINTS * effect.spread().getAsDouble())
                            : null);
            one.put(
                    "se",
                    effect.standardError().isPresent()
                            ? (Double) (POINTS * effect.standardError().getAsDouble())
                            : null);
            one.put("walks", effect.n());
            one.put("moves", movers.isMover(effect));
            effects.add(one);
        }
        object.put("effects", effects);
        return object;
    }
}
