package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;

import limbway.reports.chart.ActivityChart;
import limbway.reports.chart.GroundPairsChart;
import limbway.reports.chart.HeightChart;
import limbway.reports.chart.HourChart;
import limbway.reports.chart.Picture;
import limbway.reports.chart.ShareChart;
import limbway.reports.chart.TwoWaysChart;
import limbway.reports.measure.Measures;
import limbway.reports.measure.Weight;
import limbway.reports.words.ReplayText;

/** The whole report as one HTML page that needs no other file and no network, and no script but for its replay. */
public final class ReportPage {

    private ReportPage() {}

    /**
     * Writes the page.
     *
     * @param report what to show
     * @return HTML, ending with a line end; the same report gives the same text
     */
    public static String html(Report report) {
        Html html = Html.pageWithScripts(
                report.info().title() + ", " + report.info().layout());
        incomplete(html, report);
        mustMend(html, report);
        html.close("header").open("main");
        AnswerSection.write(html, report);
        ReplaySection.write(html, report);
        contents(html, report);
        GroundSection.write(html, report);
        DaySections.write(html, report);
        CompanySection.write(html, report);
        VisitorSection.write(html, report);
        LayoutSection.write(html, report);
        WorthSection.write(html, report);
        FindingsSection.write(html, report);
        TrustSections.write(html, report);
        return html.end();
    }

    /**
     * The pictures of the page, to be written as files too.
     *
     * @param report what to show
     * @return pictures in the order of the page
     */
    public static List<Picture> pictures(Report report) {
        Measures measures = report.measures();
        List<Picture> pictures = new ArrayList<>(List.of(
                AnswerSection.drawing(measures),
                ShareChart.byAnimal(measures),
                ActivityChart.of(measures),
                HourChart.of(measures),
                HeightChart.of(measures)));
        pictures.add(ReplaySection.picture(measures));
        if (!measures.groundUse().isEmpty()) {
            pictures.add(GroundPairsChart.of(measures));
            pictures.add(TwoWaysChart.of(measures));
        }
        if (!report.others().isEmpty()) {
            pictures.add(ShareChart.byLayout(LayoutSection.ranked(report)));
        }
        return pictures;
    }

    private static void incomplete(Html html, Report report) {
        int asked = report.info().settings().replications();
        List<Measures> lived = new ArrayList<>(List.of(report.measures()));
        lived.addAll(report.others());
        List<String> parts = new ArrayList<>();
        for (Measures layout : lived) {
            int finished = layout.outcome().journals().size();
            if (finished < asked) {
                parts.add(finished + " of " + asked + " repetitions of " + layout.layout());
            }
        }
        if (!report.leftOut().isEmpty()) {
            parts.add("no repetition of " + String.join(", ", report.leftOut()));
        }
        if (!parts.isEmpty()) {
            html.element(
                    "p class=\"caution\" role=\"note\"",
                    "This run was stopped early: it has only " + String.join(", ", parts) + ".");
        }
    }

    /** What the animals cannot have makes the shares below mean little, and must be read before them. */
    private static void mustMend(Html html, Report report) {
        int bodies = report.measures().outcome().habitat().bodies().size();
        List<String> must = report.audit().groups().stream()
                .filter(group -> group.strictest().weight() == Weight.MEND)
                .map(group -> group.text(bodies) + ".")
                .toList();
        if (!must.isEmpty()) {
            html.open("div class=\"caution\" role=\"note\"");
            html.paragraph(
                            "The animals cannot have all they need in this layout. Mend this first; until then the numbers "
                                    + "below say little.")
                    .list(must);
            html.close("div");
        }
    }

    private static void contents(Html html, Report report) {
        html.open("nav aria-label=\"Contents\"").open("ul");
        html.link("replay", ReplayText.HEADING);
        html.link("ground", "Where and why the ground is used");
        html.link("hours", "Through the day");
        html.link("heights", "Heights used");
        html.link("energy", "Energy by part");
        html.link("company", "Company at feeders");
        if (report.measures().visibility().isPresent()) {
            html.link("visitors", "Seen by visitors");
        }
        if (!report.others().isEmpty()) {
            html.link("layouts", "How the layouts compare");
        }
        html.link("worth", "With and without the worth of places");
        html.link("findings", "What the audit found");
        html.link("trust", "How far to trust this");
        html.link("numbers", "Every number used");
        html.link("again", "To make this run again");
        html.link("cautions", "Before anything is built");
        html.close("ul").close("nav");
    }
}
