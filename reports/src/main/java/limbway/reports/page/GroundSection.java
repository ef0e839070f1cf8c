package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;

import limbway.reports.chart.DataTable;
import limbway.reports.chart.GroundPairsChart;
import limbway.reports.chart.TwoWaysChart;
import limbway.reports.measure.Measures;
import limbway.reports.measure.PairUse;
import limbway.reports.words.Figures;
import limbway.reports.words.PageText;
import limbway.reports.words.ReasonText;

/** Where the ground is used, and why. */
final class GroundSection {

    private static final int MOST_ROWS = 25;

    private GroundSection() {}

    static void write(Html html, Report report) {
        Measures measures = report.measures();
        html.element("h2 id=\"ground\"", "Where and why the ground is used");
        if (measures.groundUse().isEmpty()) {
            html.paragraph("The ground was not used on any trip.");
            return;
        }
        html.figure(GroundPairsChart.of(measures));
        html.paragraph(PageText.GROUND);
        int left = measures.groundUse().size() - MOST_ROWS;
        html.table(
                "Trips over the ground, most metres first"
                        + (left > 0 ? "; " + left + " smaller ones are in data/ground_use.csv" : ""),
                table(measures));
        html.figure(TwoWaysChart.of(measures));
    }

    private static DataTable table(Measures measures) {
        List<List<String>> rows = new ArrayList<>();
        for (PairUse use : measures.groundUse().stream().limit(MOST_ROWS).toList()) {
            rows.add(List.of(
                    use.from() + " to " + use.to(),
                    use.body().name(),
                    Phrases.metres(use.groundMPerDay()),
                    Figures.decimals(use.groundTripsPerDay(), 1) + " of " + Figures.decimals(use.tripsPerDay(), 1),
                    Phrases.motives(use.motives()),
                    Phrases.sentence(ReasonText.sentence(use.ways(), use.reason(), use.body()))));
        }
        return new DataTable(
                List.of("from and to", "who", "on the ground a day", "trips a day over the ground", "for", "why"),
                rows);
    }
}
