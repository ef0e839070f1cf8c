package limbway.reports.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import limbway.reports.chart.DataTable;
import limbway.reports.measure.PlatformShade;
import limbway.reports.words.Figures;
import limbway.reports.words.Hours;
import limbway.reports.words.RoofText;
import limbway.reports.words.ShadeText;

/** What would mend a broken rule of shade, or how narrowly it is kept. */
final class RemedySection {

    private RemedySection() {}

    static void write(Html html, ShadeReport report) {
        html.element("h2 id=\"mend\"", "What would mend it");
        if (!report.hasSun()) {
            html.paragraph("Nothing has to be mended: the sun never stands high enough for the rule to ask for shade.");
            return;
        }
        if (report.isKept()) {
            html.paragraph("Nothing has to be mended for this rule. The hardest day is "
                    + Hours.day(report.hardest().date()) + ": at its tightest, for "
                    + Hours.text(report.hardest().fewestMinutes()) + ", "
                    + report.hardest().fewest() + " platforms are in shade at once.");
            return;
        }
        if (report.platforms().isEmpty()) {
            html.paragraph("There is no platform over which a roof could be put.");
            return;
        }
        html.paragraph(RoofText.of(report.roof()));
        report.toTry().ifPresent(roof -> html.paragraph("To try it, add these lines under covers:")
                .element("pre", String.join("\n", RoofText.asScenario(roof))));
        html.paragraph(ShadeText.ROOFS_TRIED).paragraph(ShadeText.ONE_ROOF);
        List<List<String>> rows = new ArrayList<>();
        for (PlatformShade platform : report.platforms().stream()
                .sorted(Comparator.comparingInt(p -> -p.mendedMinutes()))
                .toList()) {
            rows.add(List.of(
                    platform.platform(),
                    Hours.text(platform.mendedMinutes()),
                    Figures.percent(
                            (double) platform.mendedMinutes() / report.year().breachMinutes())));
        }
        html.table(
                "Breach that would end if this platform alone always lay in shade",
                new DataTable(List.of("platform", "time a year", "of all breach"), rows));
    }
}
