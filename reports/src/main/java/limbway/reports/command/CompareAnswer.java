package limbway.reports.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.reports.data.Json;
import limbway.reports.data.RunRecord;
import limbway.reports.measure.criterion.DesignCriterion;
import limbway.reports.page.CompareReport;
import limbway.reports.page.CompareText;
import limbway.sim.experiment.comparison.Compared;
import limbway.sim.experiment.comparison.Difference;
import limbway.sim.experiment.statistics.Bootstrap;

/** The machine-readable answer of a comparison. A difference is {@code a} less {@code b}, in the unit of its measure. */
final class CompareAnswer {

    private CompareAnswer() {}

    static Map<String, Object> of(CompareReport report) {
        Map<String, Object> root = report.info().record();
        Compared compared = report.compared();
        root.put("sentences", CompareText.sentences(report));
        root.put("variants", variants(compared));
        root.put("differences", differences(compared));
        root.put("correlation", correlations(compared));
        root.put("replications", compared.replications());
        root.put("stopped_because", compared.stopped().words());
        root.put("widest", compared.widest().map(d -> widest(compared, d)).orElse(null));
        root.put(
                "not_known",
                compared.missing().stream()
                        .map(missing -> pair(compared, missing.a(), missing.b(), missing.criterion()))
                        .toList());
        Map<String, Object> alone = new LinkedHashMap<>();
        report.alone().ifPresent(bare -> {
            alone.put("variants", variants(bare));
            alone.put("differences", differences(bare));
        });
        root.put("worth_off", report.alone().isPresent() ? alone : null);
        report.supplements().forEach(supplement -> root.put(supplement.id(), supplement.answer()));
        root.put(
                "measures",
                report.criteria().stream().map(CompareAnswer::measure).toList());
        root.put("parameters", RunRecord.parameters(report.info().parameters()));
        return root;
    }

    private static List<Object> variants(Compared compared) {
        List<Object> variants = new ArrayList<>();
        for (int layout = 0; layout < compared.layouts().size(); layout++) {
            Map<String, Object> measures = new LinkedHashMap<>();
            for (int c = 0; c < compared.criteria().size(); c++) {
                measures.put(
                        compared.criteria().get(c).name(),
                        compared.mean(layout, c).map(Json::interval).orElse(null));
            }
            Map<String, Object> variant = new LinkedHashMap<>();
            variant.put("name", compared.layouts().get(layout));
            variant.put("measures", measures);
            variants.add(variant);
        }
        return variants;
    }

    private static Map<String, Object> pair(Compared compared, Difference d) {
        return pair(compared, d.a(), d.b(), d.criterion());
    }

    private static Map<String, Object> pair(Compared compared, int a, int b, int criterion) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("a", compared.layouts().get(a));
        object.put("b", compared.layouts().get(b));
        object.put("measure", compared.criteria().get(criterion).name());
        return object;
    }

    private static List<Object> differences(Compared compared) {
        List<Object> differences = new ArrayList<>();
        for (Difference d : compared.differences()) {
            Map<String, Object> object = pair(compared, d);
            object.put("mean", d.paired().mean());
            object.put("lo", d.paired().lo());
            object.put("hi", d.paired().hi());
            object.put("p", d.paired().p());
            object.put("p_holm", d.pHolm());
            object.put("n", d.paired().n());
            object.put("correlation", Json.orNull(d.paired().correlation()));
            object.put("median", d.median().map(CompareAnswer::range).orElse(null));
            object.put("ratio", d.ratio().map(CompareAnswer::range).orElse(null));
            differences.add(object);
        }
        return differences;
    }

    private static List<Object> correlations(Compared compared) {
        List<Object> all = new ArrayList<>();
        for (Difference d : compared.differences()) {
            Map<String, Object> object = pair(compared, d);
            object.put("value", Json.orNull(d.paired().correlation()));
            all.add(object);
        }
        return all;
    }

    private static Map<String, Object> widest(Compared compared, Difference d) {
        Map<String, Object> object = pair(compared, d);
        object.put("half_width", d.paired().halfWidth());
        object.put("wanted", d.targetHalfWidth());
        object.put("replications_needed", d.replicationsNeeded());
        return object;
    }

    private static Map<String, Object> range(Bootstrap.Range range) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("value", range.value());
        object.put("lo", range.lo());
        object.put("hi", range.hi());
        return object;
    }

    private static Map<String, Object> measure(DesignCriterion criterion) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("name", criterion.name());
        object.put("words", criterion.words());
        object.put("unit", criterion.unit());
        object.put("share", criterion.isShare());
        object.put("wish", criterion.wish().words());
        return object;
    }
}
