package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.reports.chart.DataTable;
import limbway.reports.chart.DifferenceChart;
import limbway.reports.chart.Picture;
import limbway.reports.data.CompareInfo;
import limbway.reports.measure.criterion.DesignCriterion;
import limbway.reports.words.Figures;
import limbway.reports.words.PageText;
import limbway.reports.words.ReplayText;
import limbway.sim.experiment.comparison.Compared;
import limbway.sim.experiment.comparison.Difference;
import limbway.sim.experiment.statistics.Bootstrap;

/** A comparison of layouts as one HTML page that needs no other file, no script and no network. */
public final class ComparePage {

    private static final List<String> DOUBTFUL = List.of(
            "Intervals say how far chance moves a difference, not how far the model is from your animals. A difference that is "
                    + "sure here may still rest on an assumption: see the one with needs and energy alone, and limbway screen.",
            "The p values are corrected for the pairs of layouts within each measure, not for the number of measures. Decide "
                    + "beforehand which measure counts; among twenty of them one may be declared by chance.",
            "A comparison that stops when its intervals are narrow stops rather on repetitions that happen to be alike: "
                    + "intervals of 95 % then cover the truth a little less often.",
            "Compared is what the file describes. A layout that nobody drew may be better than all.");

    private ComparePage() {}

    /**
     * Writes the page.
     *
     * @param report what to tell
     * @return HTML, ending with a line end; the same report gives the same text
     */
    public static String html(CompareReport report) {
        Compared compared = report.compared();
        String title = "Which layout: " + report.info().title();
        Html html = report.watched().isEmpty() ? Html.page(title) : Html.pageWithScripts(title);
        html.close("header").open("main");
        CompareAnswerSection.write(html, report);
        contents(html, report);
        html.element("h2 id=\"differences\"", "How they differ");
        html.figure(pictures(report).get(0), narrow(report));
        List<DesignCriterion> leftOff = DifferenceChart.leftOff(compared, report.criteria());
        if (!leftOff.isEmpty()) {
            html.paragraph("Not drawn, because they may be below 0 and a share of a mean near 0 says nothing: "
                    + String.join(
                            "; ", leftOff.stream().map(DesignCriterion::words).toList())
                    + ". Their differences in their own units are under Every difference.");
        }
        scorecard(html, report);
        if (!report.watched().isEmpty()) {
            ReplaySection.write(html, report);
        }
        report.alone().ifPresent(alone -> {
            html.element("h2 id=\"worth\"", "With needs and energy alone").paragraph(PageText.WORTH);
            html.table("Travel off the ground with needs and energy alone", CompareViews.alone(report, alone));
        });
        report.supplements().forEach(supplement -> supplement.write(html));
        found(html, report);
        html.element("h2 id=\"trust\"", "Where not to trust this").list(DOUBTFUL);
        html.element("h2 id=\"all\"", "Every difference");
        html.table("Every pair of layouts in every measure", CompareViews.differences(compared, report.criteria()));
        html.element("h2 id=\"numbers\"", "Every number used").paragraph(PageText.PARAMETERS);
        html.table("Parameters", TrustSections.parameters(report.info().parameters()));
        again(html, report);
        return html.end();
    }

    /**
     * The pictures of the page, to be written as files too.
     *
     * @param report what to tell
     * @return pictures in the order of the page, without those of supplements
     */
    public static List<Picture> pictures(CompareReport report) {
        return List.of(DifferenceChart.of(
                report.compared(),
                report.criteria(),
                report.ranked(),
                report.alone(),
                CompareViews.differences(report.compared(), report.criteria())));
    }

    private static Picture narrow(CompareReport report) {
        return DifferenceChart.narrow(
                report.compared(),
                report.criteria(),
                report.ranked(),
                report.alone(),
                CompareViews.differences(report.compared(), report.criteria()));
    }

    /**
     * What stands where the replay would be, to be written as files too.
     *
     * @param report what to tell
     * @return a picture of the travel of one repetition in each layout that can be watched
     */
    public static List<Picture> watched(CompareReport report) {
        return ReplaySection.pictures(report);
    }

    private static void contents(Html html, CompareReport report) {
        html.open("nav aria-label=\"Contents\"").open("ul");
        html.link("differences", "How they differ");
        html.link("scorecard", "The scorecard");
        if (!report.watched().isEmpty()) {
            html.link("replay", ReplayText.HEADING);
        }
        if (report.alone().isPresent()) {
            html.link("worth", "With needs and energy alone");
        }
        report.supplements().forEach(supplement -> html.link(supplement.id(), supplement.heading()));
        html.link("found", "How it was found");
        html.link("trust", "Where not to trust this");
        html.link("all", "Every difference");
        html.link("numbers", "Every number used");
        html.link("again", "To compare again");
        html.link("cautions", "Before anything is built");
        html.close("ul").close("nav");
    }

    private static void scorecard(Html html, CompareReport report) {
        html.element("h2 id=\"scorecard\"", "The scorecard");
        html.paragraph(
                PageText.INTERVALS + " A filled diamond marks the best layout of a row, a hollow one those that cannot "
                        + "be told from it: chance alone may make the difference. Where neither more nor less is wanted nothing is "
                        + "marked.");
        html.table("Measures of each layout", CompareViews.scorecard(report));
        List<String> unknown = CompareViews.unknown(report);
        if (!unknown.isEmpty()) {
            html.paragraph("Not known in any two layouts, for want of weather, viewpoints or travel in the scenario: "
                    + String.join("; ", unknown) + ".");
        }
    }

    private static void found(Html html, CompareReport report) {
        CompareInfo info = report.info();
        html.element("h2 id=\"found\"", "How it was found");
        List<String> items = new ArrayList<>();
        items.add("The group lives through " + info.settings().days() + " days after "
                + info.settings().warmUpDays()
                + " days of warm-up in every layout, and again with other chance. A repetition of the same number has the same "
                + "chance in every layout: what layouts share cancels in their difference. " + chance(report));
        items.add(
                "Differences are taken repetition by repetition; their intervals are those of Student's t. The p values "
                        + "of the paired t test are corrected by Holm's method for the "
                        + pairs(report.compared())
                        + " of each measure (Holm 1979, Scandinavian Journal of Statistics 6:65-70).");
        items.add("Medians and ratios have bootstrap intervals: " + Bootstrap.LEAST_RESAMPLES
                + " times as many repetitions are drawn from those that there are (Efron 1979, doi "
                + "10.1214/aos/1176344552).");
        items.add("It was looked at after " + Figures.count(info.rule().first()) + " repetitions and then every "
                + Figures.count(info.rule().batch()) + ", until half the interval of every difference in "
                + String.join(", ", info.required()) + " was at most "
                + 100 * info.rule().precision()
                + " points for shares, or " + 100 * info.rule().relative()
                + " % of the mean of the two layouts for amounts (divided by one more than that), or until "
                + Figures.count(info.settings().replications()) + " repetitions were made.");
        items.add(CompareText.stopped(report));
        html.list(items);
    }

    private static String pairs(Compared compared) {
        int pairs = compared.layouts().size() * (compared.layouts().size() - 1) / 2;
        return pairs == 1 ? "one pair" : pairs + " pairs";
    }

    /** What the same chance was worth, by the answer. */
    private static String chance(CompareReport report) {
        Optional<Difference> least = Optional.empty();
        Optional<Difference> most = Optional.empty();
        for (Difference d : report.compared().in(0)) {
            if (d.paired().correlation().isPresent()) {
                if (least.isEmpty() || correlation(d) < correlation(least.get())) {
                    least = Optional.of(d);
                }
                if (most.isEmpty() || correlation(d) > correlation(most.get())) {
                    most = Optional.of(d);
                }
            }
        }
        if (least.isEmpty()) {
            return "";
        }
        String from = CompareText.correlation(least.get().paired().correlation());
        String to = CompareText.correlation(most.orElseThrow().paired().correlation());
        return "In the travel off the ground the correlation of two layouts is "
                + (from.equals(to) ? from : "between " + from + " and " + to)
                + ": near 1 the same chance saves many repetitions, near 0 it saves none, and below 0 it costs some.";
    }

    private static double correlation(Difference d) {
        return d.paired().correlation().orElseThrow();
    }

    private static void again(Html html, CompareReport report) {
        CompareInfo info = report.info();
        html.element("h2 id=\"again\"", "To compare again");
        html.table(
                "The comparison",
                new DataTable(
                        List.of("what", "value"),
                        List.of(
                                List.of("scenario", info.scenario()),
                                List.of("SHA-256 of the scenario", info.sha256Hex()),
                                List.of("layouts", String.join(", ", info.layouts())),
                                List.of("seed", Integer.toString(info.settings().seed())),
                                List.of(
                                        "repetitions",
                                        Figures.count(report.compared().replications()) + " of at most "
                                                + Figures.count(info.settings().replications())),
                                List.of(
                                        "days in each",
                                        Integer.toString(info.settings().days())),
                                List.of(
                                        "days of warm-up before",
                                        Integer.toString(info.settings().warmUpDays())),
                                List.of("date of day 1", info.settings().date().toString()),
                                List.of("worth of places", info.worth() ? "on" : "off"),
                                List.of("Limbway", info.limbwayVersion()),
                                List.of("Java", info.javaVersion()))));
        if (!info.notes().isEmpty()) {
            html.element("h3", "Remarks on the scenario")
                    .list(info.notes().stream().map(Phrases::sentence).toList());
        }
    }
}
