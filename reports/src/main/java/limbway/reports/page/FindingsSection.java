package limbway.reports.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

import limbway.model.body.Body;
import limbway.reports.chart.DataTable;
import limbway.reports.measure.Audit;
import limbway.reports.measure.Finding;
import limbway.reports.words.Figures;
import limbway.reports.words.PageText;

/** What the audit found before the run; bodies with the same trouble at the same place share a row. */
final class FindingsSection {

    private record Row(String kind, String place, OptionalDouble figure) {}

    private FindingsSection() {}

    static void write(Html html, Report report) {
        Audit audit = report.audit();
        html.element("h2 id=\"findings\"", "What the audit found").paragraph(PageText.FINDINGS);
        html.paragraph("Ground: " + Figures.decimals(audit.groundM2(), 0)
                + " m². Ground times the height that the longest arm reaches above the highest thing: "
                + Figures.decimals(audit.grossM3(), 0) + " m³.");
        Map<Row, List<Finding>> groups = new LinkedHashMap<>();
        for (Finding finding : audit.findings()) {
            Row row = new Row(finding.kind(), finding.place(), finding.figure());
            groups.computeIfAbsent(row, k -> new ArrayList<>()).add(finding);
        }
        List<Body> bodies = report.measures().outcome().habitat().bodies();
        List<List<String>> rows = new ArrayList<>();
        groups.values().forEach(findings -> rows.add(cells(findings, bodies)));
        html.table("Findings", new DataTable(List.of("weight", "who", "found", "mend"), rows));
    }

    private static List<String> cells(List<Finding> findings, List<Body> bodies) {
        Finding strictest = findings.stream()
                .min(Comparator.comparingDouble(finding -> reachM(finding.body(), bodies)))
                .orElseThrow();
        List<String> who = findings.stream().map(Finding::body).distinct().toList();
        String found = Phrases.sentence(strictest.text());
        return List.of(
                strictest.weight().word(),
                strictest.body().isEmpty() ? "all" : String.join(", ", who),
                who.size() > 1 ? "Of these the one that reaches least: " + strictest.text() + "." : found,
                Phrases.sentence(strictest.mend()));
    }

    private static double reachM(String body, List<Body> bodies) {
        return bodies.stream()
                .filter(candidate -> candidate.name().equals(body))
                .mapToDouble(Body::gapReachM)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
