package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;

import limbway.reports.chart.DataTable;
import limbway.reports.measure.Audit;
import limbway.reports.measure.Finding;
import limbway.reports.measure.FindingGroup;
import limbway.reports.words.Figures;
import limbway.reports.words.PageText;

/** What the audit found before the run. */
final class FindingsSection {

    private FindingsSection() {}

    static void write(Html html, Report report) {
        Audit audit = report.audit();
        html.element("h2 id=\"findings\"", "What the audit found").paragraph(PageText.FINDINGS);
        html.paragraph("Ground: " + Figures.decimals(audit.groundM2(), 0)
                + " m². Ground times the height that the longest arm reaches above the highest thing: "
                + Figures.decimals(audit.grossM3(), 0) + " m³.");
        List<List<String>> rows = new ArrayList<>();
        int bodies = report.measures().outcome().habitat().bodies().size();
        for (FindingGroup group : audit.groups()) {
            Finding finding = group.strictest();
            String text = group.text(bodies);
            rows.add(List.of(
                    finding.weight().word(),
                    text.equals(finding.text()) ? Phrases.sentence(text) : text + ".",
                    Phrases.sentence(finding.mend())));
        }
        html.table("Findings", new DataTable(List.of("weight", "found", "mend"), rows));
    }
}
