package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.body.LocomotorMode;
import limbway.reports.chart.ActivityChart;
import limbway.reports.chart.DataTable;
import limbway.reports.chart.HeightChart;
import limbway.reports.chart.HourChart;
import limbway.reports.measure.AnimalEnergy;
import limbway.reports.words.Figures;
import limbway.reports.words.PageText;
import limbway.reports.words.PartText;

/** Hours, heights and energy. */
final class DaySections {

    private DaySections() {}

    static void write(Html html, Report report) {
        html.element("h2 id=\"hours\"", "Through the day").paragraph(PageText.ACTIVITY);
        waking(html, report);
        html.figure(ActivityChart.of(report.measures())).paragraph(PageText.HOURS);
        html.figure(HourChart.of(report.measures()));
        html.element("h2 id=\"heights\"", "Heights used").paragraph(PageText.HEIGHTS);
        html.figure(HeightChart.of(report.measures()));
        html.element("h2 id=\"energy\"", "Energy by part").paragraph(PageText.ENERGY);
        HungerText.of(report.measures().energy()).ifPresent(html::paragraph);
        html.table("Energy of each animal [kJ a day] and travel [m a day]", energy(report));
    }

    private static void waking(Html html, Report report) {
        List<String> parts = new ArrayList<>();
        report.measures().budget().waking().forEach((activity, share) -> {
            if (share.mean() > 0) {
                parts.add(activity.word() + " " + Phrases.share(Optional.of(share)));
            }
        });
        if (!parts.isEmpty()) {
            html.paragraph("Of their waking time: " + String.join("; ", parts) + ".");
        }
    }

    private static DataTable energy(Report report) {
        List<LocomotorMode> modes = PartText.asTold().stream()
                .filter(mode -> report.measures().energy().stream()
                        .anyMatch(energy -> energy.movedJPerDay().get(mode) > 0))
                .toList();
        List<String> headers = new ArrayList<>(List.of("animal", "moving"));
        for (LocomotorMode mode : modes) {
            headers.add("of it " + PartText.doing(mode));
        }
        headers.addAll(List.of("resting", "other", "eaten", "travel"));
        List<List<String>> rows = new ArrayList<>();
        for (AnimalEnergy energy : report.measures().energy()) {
            List<String> row = new ArrayList<>(
                    List.of(energy.animal() + ", " + energy.body(), Phrases.kiloJ(energy.movedTotalJPerDay())));
            for (LocomotorMode mode : modes) {
                row.add(Figures.decimals(energy.movedJPerDay().get(mode) / 1000, 1));
            }
            row.add(Phrases.kiloJ(energy.restingJPerDay()));
            row.add(Phrases.kiloJ(energy.otherJPerDay()));
            row.add(Phrases.kiloJ(energy.eatenJPerDay()));
            row.add(Phrases.metres(energy.travelMPerDay()));
            rows.add(row);
        }
        return new DataTable(headers, rows);
    }
}
