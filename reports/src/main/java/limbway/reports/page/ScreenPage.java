package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import limbway.reports.chart.DataTable;
import limbway.reports.chart.EffectBars;
import limbway.reports.chart.Picture;
import limbway.reports.chart.ScreeningChart;
import limbway.reports.measure.Movers;
import limbway.reports.measure.ScreenedAnswer;
import limbway.reports.words.PageText;
import limbway.sim.experiment.screening.Effect;
import limbway.sim.experiment.screening.Factor;
import limbway.sim.experiment.screening.Trajectory;

/** A screening as one HTML page that needs no other file, no script and no network. */
public final class ScreenPage {

    private static final int MOST_ROWS = 10;

    private static final List<String> DOUBTFUL = List.of(
            "The ranges are what is worth trying, not what is likely: an end of a range counts as much as its middle. An "
                    + "effect is a size to look at, not a probability.",
            "Only numbers are varied. What the model leaves out, and how its formulas are built, moves the answer too and is "
                    + "not seen here.",
            "What is published is held fixed, and so are the bodies of the animals, the enclosure and the weather.",
            "Walks are few. Effects of a size with their standard errors may change places with another seed.",
            "An assumption that moves this layout little may move another one much: screen each layout that you decide on.");

    private ScreenPage() {}

    /**
     * Writes the page.
     *
     * @param report what to tell
     * @return HTML, ending with a line end; the same report gives the same text
     */
    public static String html(ScreenReport report) {
        Html html = Html.page("Which assumptions matter: " + report.info().title() + ", " + ScreenText.layouts(report));
        html.close("header").open("main");
        html.element("h2 id=\"answer\"", "The answer");
        html.element("p class=\"answer\"", ScreenText.sentence(report, ScreenedAnswer.OFF_GROUND));
        html.paragraph(ScreenText.range(report, ScreenedAnswer.OFF_GROUND));
        contents(html);
        section(html, report, ScreenedAnswer.OFF_GROUND, "What moves the " + ScreenedAnswer.OFF_GROUND.words());
        html.element("h2 id=\"high\"", "What moves the " + ScreenedAnswer.ELEVATED.words());
        html.paragraph(ScreenText.sentence(report, ScreenedAnswer.ELEVATED));
        html.paragraph(ScreenText.range(report, ScreenedAnswer.ELEVATED));
        section(html, report, ScreenedAnswer.ELEVATED, "");
        means(html, report);
        html.element("h2 id=\"trust\"", "Where not to trust this").list(DOUBTFUL);
        html.element("h2 id=\"numbers\"", "Every number used").paragraph(PageText.PARAMETERS);
        html.table("Parameters", TrustSections.parameters(report.info().parameters()));
        again(html, report);
        return html.end();
    }

    /**
     * The pictures of the page, to be written as files too.
     *
     * @param report what to tell
     * @return pictures in the order of the page
     */
    public static List<Picture> pictures(ScreenReport report) {
        List<Picture> pictures = new ArrayList<>();
        for (Movers movers : report.answers()) {
            pictures.addAll(pictures(movers));
        }
        return pictures;
    }

    private static List<Picture> pictures(Movers movers) {
        List<Picture> pictures = new ArrayList<>();
        String suffix = movers.answer() == ScreenedAnswer.OFF_GROUND
                ? ""
                : "-" + movers.answer().name().toLowerCase(Locale.ROOT);
        DataTable table = ScreenText.table(movers.effects());
        if (!movers.effects().isEmpty()) {
            pictures.add(EffectBars.of(
                    "screening-largest" + suffix,
                    "How far each assumption moves the " + movers.answer().words() + ", the ten that do most",
                    movers,
                    table));
        }
        if (movers.effects().stream().anyMatch(effect -> effect.spread().isPresent())) {
            pictures.add(ScreeningChart.of(
                    "screening" + suffix,
                    "How much each assumption moves the " + movers.answer().words()
                            + ", and how much that depends on the others",
                    movers,
                    table));
        }
        return pictures;
    }

    private static void contents(Html html) {
        html.open("nav aria-label=\"Contents\"").open("ul");
        html.link("movers", "What moves the answer");
        html.link("high", "What moves the time spent up high");
        html.link("means", "What this means");
        html.link("trust", "Where not to trust this");
        html.link("numbers", "Every number used");
        html.link("again", "To screen again");
        html.link("cautions", "Before anything is built");
        html.close("ul").close("nav");
    }

    private static void section(Html html, ScreenReport report, ScreenedAnswer answer, String heading) {
        Movers movers = report.of(answer);
        if (!heading.isEmpty()) {
            html.element("h2 id=\"movers\"", heading);
        }
        html.open("div class=\"pair\"");
        pictures(movers).forEach(html::figure);
        html.close("div");
        List<Effect> largest = movers.effects().stream().limit(MOST_ROWS).toList();
        String caption = "The ten largest effects" + (heading.isEmpty() ? " on the time spent up high" : "");
        html.table(caption, ScreenText.table(largest)).paragraph(ScreenText.rule(movers));
    }

    private static void means(Html html, ScreenReport report) {
        html.element("h2 id=\"means\"", "What this means");
        html.list(List.of(
                "Mean absolute effect: by how many percentage points the answer changes, on average, from one end of the range "
                        + "of a number to the other, whichever way. It tells what matters.",
                "Spread: how unlike these changes are. A large spread says that the number matters only together with "
                        + "others, or only in a part of its range: settle it together with them.",
                "Direction: whether the answer goes up or down as the number grows; either way, if that depends on the "
                        + "others.",
                "What to do: find out about those that move the answer, by watching your own animals or by asking who has, "
                        + "before you lean on it. Those that do nothing here need no more thought for this layout."));
        html.paragraph("How it was found: " + report.trajectories() + " walks through the ranges of " + report.factors()
                + " numbers, all of them that are not published and have a range. On each walk every number is changed "
                + "once, one at a time, by two thirds of its range, in an order by chance; in ranges that span more than a "
                + "factor of " + Math.round(Factor.LOGARITHMIC_ABOVE) + " by equal factors. At each of the "
                + report.evaluations() + " points the group lives through "
                + report.info().settings().replications() + " repetitions of "
                + report.info().settings().days()
                + " days after " + report.info().settings().warmUpDays()
                + " days of warm-up, always under the same chance. The method is that of Morris 1991, doi "
                + "10.1080/00401706.1991.10484804, with " + Trajectory.LEVELS
                + " levels; the mean absolute effect is from Campolongo, Cariboni and Saltelli 2007, doi "
                + "10.1016/j.envsoft.2006.10.004."
                + (report.redrawn() > 0
                        ? " " + report.redrawn()
                                + " walks were drawn anew because they led through values that cannot be combined."
                        : ""));
    }

    private static void again(Html html, ScreenReport report) {
        html.element("h2 id=\"again\"", "To screen again");
        var info = report.info();
        html.table(
                "The screening",
                new DataTable(
                        List.of("what", "value"),
                        List.of(
                                List.of("scenario", info.scenario()),
                                List.of("SHA-256 of the scenario", info.sha256Hex()),
                                List.of("layout", info.layout()),
                                List.of("compared with", info.against().orElse("nothing")),
                                List.of("seed", Integer.toString(info.settings().seed())),
                                List.of("walks", report.trajectories() + " of " + info.trajectories()),
                                List.of(
                                        "repetitions",
                                        Integer.toString(info.settings().replications())),
                                List.of(
                                        "days in each",
                                        Integer.toString(info.settings().days())),
                                List.of(
                                        "days of warm-up before",
                                        Integer.toString(info.settings().warmUpDays())),
                                List.of("date of day 1", info.settings().date().toString()),
                                List.of("Limbway", info.limbwayVersion()),
                                List.of("Java", info.javaVersion()))));
        if (!info.notes().isEmpty()) {
            html.element("h3", "Remarks on the scenario")
                    .list(info.notes().stream().map(Phrases::sentence).toList());
        }
    }
}
