package limbway.reports.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

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
            html.paragraph(
                    "The scenario has no weather, so no temperatures are told. Add weather to it, as monthly means or "
                            + "as a file of hours.");
            return;
        }
        SupportHeat heat = report.heat().get();
        html.paragraph("The hour of the year in which a bare steel tube in the open gets hottest is "
                + Hours.moment(heat.clock()) + " by the clocks of the site: "
                + HeatText.conditions(heat.hour().open()) + ". The weather is " + heat.origin()
                + ". On that day the supports, where they stand, in sun and shade, come to:");
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
        for (MemberDay member :
                heat.hottestFirst().stream().limit(MOST_SUPPORTS).toList()) {
            boolean isEven = SupportHeat.isEven(member.surface());
            int hour = member.hottestHour();
            rows.add(List.of(
                    member.supportId(),
                    member.surface().word(),
                    Figures.thickness(member.diameterM()),
                    HeatText.surface(member.peakC(), member.sunnySideC().get(hour), isEven)
                            + HeatText.lag(member.isSteady()),
                    hour + ":30",
                    HeatText.burns(SupportHeat.burnsWithin(member), isEven)));
        }
        return new DataTable(List.of("support", "surface", "thickness", "at its hottest point", "when", "touch"), rows);
    }

    /** One row for each surface and thickness, one column for each wind. */
    private static DataTable comparison(SupportHeat heat) {
        Set<String> winds = new LinkedHashSet<>();
        Map<String, List<String>> rows = new LinkedHashMap<>();
        for (HotHour.Row row : heat.comparison()) {
            boolean isEven = SupportHeat.isEven(row.surface());
            winds.add(row.windMPerS() == 0 ? "still air" : "wind " + Figures.decimals(row.windMPerS(), 1) + " m/s");
            String thickness = Figures.thickness(row.diameterM());
            rows.computeIfAbsent(
                            row.surface().word() + "\n" + thickness,
                            key -> new ArrayList<>(List.of(row.surface().word(), thickness)))
                    .add(HeatText.surface(row.surfaceC(), row.sunnySideC(), isEven)
                            + HeatText.lag(row.isSteady()) + "; "
                            + HeatText.burns(SupportHeat.burnsWithin(row), isEven));
        }
        List<String> headers = new ArrayList<>(List.of("surface", "thickness"));
        headers.addAll(winds);
        return new DataTable(headers, List.copyOf(rows.values()));
    }
}
