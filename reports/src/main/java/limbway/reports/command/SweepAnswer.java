package limbway.reports.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.reports.data.Json;
import limbway.reports.data.SweepInfo;
import limbway.reports.measure.criterion.DesignCriterion;
import limbway.reports.measure.sweep.MainEffect;
import limbway.reports.measure.sweep.Swept;
import limbway.reports.measure.sweep.SweptCase;

/** The machine-readable answer of a sweep, and its record. */
final class SweepAnswer {

    private SweepAnswer() {}

    static Map<String, Object> of(SweepInfo info, Swept swept, DesignCriterion rankedBy) {
        Map<String, Object> root = info.record();
        List<Object> criteria = new ArrayList<>();
        for (DesignCriterion criterion : swept.criteria()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("name", criterion.name());
            one.put("words", criterion.words());
            one.put("unit", criterion.unit());
            one.put("share", criterion.isShare());
            one.put("wish", criterion.wish().words());
            criteria.add(one);
        }
        root.put("measures", criteria);
        root.put("ranked_by", rankedBy.name());
        root.put(
                "best",
                swept.ranked(rankedBy).stream()
                        .limit(1)
                        .map(best -> of(swept, best))
                        .findFirst()
                        .orElse(null));
        root.put("points", swept.cases().stream().map(one -> of(swept, one)).toList());
        List<Object> effects = new ArrayList<>();
        for (DesignCriterion criterion : swept.criteria()) {
            swept.effects(criterion).forEach(effect -> effects.add(of(criterion, effect)));
        }
        root.put("effects", effects);
        return root;
    }

    private static Map<String, Object> of(Swept swept, SweptCase one) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("point", one.point());
        Map<String, Object> values = new LinkedHashMap<>();
        for (int f = 0; f < swept.factors().size(); f++) {
            values.put(swept.factors().get(f).name(), one.values().get(f));
        }
        object.put("values", values);
        object.put("layout", one.layout());
        Map<String, Object> measures = new LinkedHashMap<>();
        for (DesignCriterion criterion : swept.criteria()) {
            measures.put(
                    criterion.name(),
                    swept.value(one, criterion).map(Json::interval).orElse(null));
        }
        object.put("measures", measures);
        return object;
    }

    private static Map<String, Object> of(DesignCriterion criterion, MainEffect effect) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("factor", effect.factor().name());
        object.put("measure", criterion.name());
        List<Object> levels = new ArrayList<>();
        for (int level = 0; level < effect.levels().size(); level++) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("value", effect.factor().levels().get(level));
            one.put("mean", effect.levels().get(level).map(Json::interval).orElse(null));
            levels.add(one);
        }
        object.put("levels", levels);
        object.put("difference", effect.between().map(Json::interval).orElse(null));
        return object;
    }
}
