package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;

import limbway.reports.chart.DataTable;
import limbway.reports.chart.Picture;
import limbway.reports.chart.PlatformShadeChart;
import limbway.reports.chart.ShadeMapChart;
import limbway.reports.chart.ShadeYearChart;
import limbway.reports.chart.SunPathChart;
import limbway.reports.measure.PlatformShade;
import limbway.reports.measure.ShadeMap;
import limbway.reports.words.Figures;
import limbway.reports.words.Hours;
import limbway.reports.words.PageText;
import limbway.reports.words.ShadeText;

/** A year of shade as one HTML page that needs no other file, no script and no network. */
public final class ShadePage {

    private ShadePage() {}

    /**
     * Writes the page.
     *
     * @param report what to tell
     * @param views what to show beside it
     * @return HTML, ending with a line end; the same report gives the same text
     */
    public static String html(ShadeReport report, ShadeViews views) {
        Html html = Html.page("Shade through the year: " + report.info().title() + ", "
                + report.info().layout());
        html.close("header").open("main");
        answer(html, report);
        contents(html);
        RemedySection.write(html, report);
        platforms(html, report);
        sun(html, report, views);
        maps(html, report, views);
        HeatSection.write(html, report);
        html.element("h2 id=\"trust\"", "Where not to trust this").list(ShadeText.DOUBTFUL);
        html.element("h2 id=\"numbers\"", "Every number used").paragraph(PageText.PARAMETERS);
        html.table("Parameters", TrustSections.parameters(report.info().parameters()));
        again(html, report);
        return html.end();
    }

    /**
     * The pictures of the page, to be written as files too.
     *
     * @param report what to tell
     * @param views what to show beside it
     * @return pictures in the order of the page
     */
    public static List<Picture> pictures(ShadeReport report, ShadeViews views) {
        List<Picture> pictures = new ArrayList<>();
        if (report.hasSun()) {
            pictures.add(yearChart(report));
            if (!report.platforms().isEmpty()) {
                pictures.add(PlatformShadeChart.of(report.hours(), report.platforms()));
            }
        }
        pictures.add(sunPaths(report, views));
        pictures.add(ShadeMapChart.ofYear(report.enclosure(), views.map()));
        pictures.add(ShadeMapChart.ofDay(report.enclosure(), views.map()));
        return pictures;
    }

    private static Picture yearChart(ShadeReport report) {
        return ShadeYearChart.of(report.hours(), report.year().rule().atLeast());
    }

    private static Picture sunPaths(ShadeReport report, ShadeViews views) {
        return SunPathChart.of(
                report.enclosure().site(),
                views.days(),
                views.hours(),
                views.patches(),
                report.year().rule().lowestSunDeg());
    }

    private static void answer(Html html, ShadeReport report) {
        html.element("h2 id=\"answer\"", "The answer");
        html.open("div class=\"first\"").open("div");
        html.element("p class=\"big\"", report.isKept() ? "Enough shade" : "Too little shade");
        html.element("p class=\"answer\"", "The rule is " + ShadeText.verdict(report.year()) + ".");
        if (!report.isKept()) {
            html.paragraph(Phrases.sentence("it is broken " + ShadeText.when(report.year())));
        }
        html.paragraph("What is asked: " + ShadeText.rule(report.year().rule()) + ".");
        html.paragraph(ShadeText.standardTime(report.year().calendar())).close("div");
        if (report.hasSun()) {
            html.figure(yearChart(report));
        }
        html.close("div");
    }

    private static void contents(Html html) {
        html.open("nav aria-label=\"Contents\"").open("ul");
        html.link("mend", "What would mend it");
        html.link("platforms", "Platform by platform");
        html.link("sun", "Where the sun stands when shade is too little");
        html.link("maps", "Where the shade falls");
        html.link("heat", "How hot supports get");
        html.link("trust", "Where not to trust this");
        html.link("numbers", "Every number used");
        html.link("again", "To look again");
        html.link("cautions", "Before anything is built");
        html.close("ul").close("nav");
    }

    private static void platforms(Html html, ShadeReport report) {
        html.element("h2 id=\"platforms\"", "Platform by platform");
        if (report.platforms().isEmpty()) {
            html.paragraph("There is no platform in this layout.");
            return;
        }
        List<List<String>> rows = new ArrayList<>();
        for (PlatformShade platform : report.platforms()) {
            rows.add(List.of(
                    platform.platform(), Hours.text(platform.shadedMinutes()), Figures.percent(platform.share())));
        }
        html.table(
                "Time in shade while the sun is up",
                new DataTable(List.of("platform", "time a year", "of the time with sun"), rows));
        if (report.hasSun()) {
            html.figure(PlatformShadeChart.of(report.hours(), report.platforms()));
        }
    }

    private static void sun(Html html, ShadeReport report, ShadeViews views) {
        html.element("h2 id=\"sun\"", "Where the sun stands when shade is too little");
        html.paragraph(ShadeText.SUN_PATHS).figure(sunPaths(report, views));
    }

    private static void maps(Html html, ShadeReport report, ShadeViews views) {
        html.element("h2 id=\"maps\"", "Where the shade falls");
        html.paragraph("A place counts as shaded while at most "
                + Figures.percent(report.year().rule().mostBeam())
                + " of the direct sunlight reaches it. The average is taken over every " + ShadeMap.DAY_STEP
                + "th day of the year; "
                + Hours.day(views.map().day()) + " is "
                + (report.isKept() ? "the day that is hardest to pass in shade." : "the worst day."));
        html.open("div class=\"pair\"");
        html.figure(ShadeMapChart.ofYear(report.enclosure(), views.map()));
        html.figure(ShadeMapChart.ofDay(report.enclosure(), views.map()));
        html.close("div");
    }

    private static void again(Html html, ShadeReport report) {
        html.element("h2 id=\"again\"", "To look again");
        var calendar = report.year().calendar();
        html.table(
                "The audit",
                new DataTable(
                        List.of("what", "value"),
                        List.of(
                                List.of("scenario", report.info().scenario()),
                                List.of("SHA-256 of the scenario", report.info().sha256Hex()),
                                List.of("layout", report.info().layout()),
                                List.of("year", Integer.toString(calendar.year())),
                                List.of("step", calendar.stepMin() + " min"),
                                List.of("Limbway", report.info().limbwayVersion()),
                                List.of("Java", report.info().javaVersion()))));
        if (!report.info().notes().isEmpty()) {
            html.element("h3", "Remarks on the scenario")
                    .list(report.info().notes().stream().map(Phrases::sentence).toList());
        }
    }
}
