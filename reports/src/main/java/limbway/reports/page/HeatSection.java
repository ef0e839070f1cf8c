package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;

import limbway.model.heat.HotHour;
import limbway.model.heat.MemberDay;
import limbway.reports.chart.DataTable;
import limbway.reports.measure.SupportHeat;
import limbway.reports.words.Figures;
import limbway.reports.words.HeatText;
import limbway.reports.words.Hours;

/** How hot supports get in the sun. */
final class HeatSection {

    private static final int MOST_SUPPORTS = 15;

    private HeatSection() {}

    static void write(Html html, ShadeReport report) {
        html.element("h2 id=\"heat\"", "How hot supports get");
        if (report.heat().isEmpty()) {
            html.paragraph("The scenario has no weather, so no temperatures are told. Add weather to it, as monthly means or "
                    + "as a file of hours.");
            return;
        }
        SupportHeat heat = report.heat().get();
        html.paragraph("The hour of the year in which a bare steel tube in the open gets hottest is "
                + Hours.moment(heat.clock()) + " by the clocks of the site: "
                + HeatText.conditions(heat.hour().open()) + " (" + heat.origin()
                + "). On that day the supports, where they stand, in sun and shade, come to:");
        html.table("Hottest supports, at the middle of each hour", supports(heat));
        int left = heat.hottestFirst().size() - MOST_SUPPORTS;
        if (left > 0) {
            html.paragraph(left + " cooler ones are in data/support_heat.csv.");
        }
        html.paragraph("In the same hour, in the open and square to the sun, by surface, thickness and wind:");
        html.table("Metal, painted metal, wood and rope", comparison(heat));
        html.paragraph(HeatText.THRESHOLDS);
        html.element("h3", "Where not to trust temperatures").list(HeatText.DOUBTFUL);
    }

    private static DataTable supports(SupportHeat heat) {
        List<List<String>> rows = new ArrayList<>();
        for (MemberDay member : heat.hottestFirst().stream().limit(MOST_SUPPORTS).toList()) {
            int hour = member.hottestHour();
            rows.add(List.of(
                    member.supportId(),
                    member.surface().word(),
                    Figures.thickness(member.diameterM()),
                    HeatText.degreesC(member.peakC()),
                    HeatText.degreesC(member.sunnySideC().get(hour)),
                    hour + ":30",
                    HeatText.burns(SupportHeat.burnsWithin(member))));
        }
        return new DataTable(
                List.of("support", "surface", "thickness", "hottest point", "side to the sun, at most", "at", "touch"), rows);
    }

    private static DataTable comparison(SupportHeat heat) {
        List<List<String>> rows = new ArrayList<>();
        for (HotHour.Row row : heat.comparison()) {
            rows.add(List.of(
                    row.surface().word(),
                    Figures.thickness(row.diameterM()),
                    row.windMPerS() == 0 ? "still air" : Figures.decimals(row.windMPerS(), 1) + " m/s",
                    HeatText.degreesC(row.surfaceC()),
                    HeatText.degreesC(row.sunnySideC()),
                    HeatText.burns(SupportHeat.burnsWithin(row))));
        }
        return new DataTable(
                List.of("surface", "thickness", "wind", "mean round it", "side to the sun, at most", "touch"), rows);
    }
}
