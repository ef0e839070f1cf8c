package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;

import limbway.reports.chart.DataTable;
import limbway.reports.chart.FrontChart;
import limbway.reports.chart.Picture;
import limbway.reports.measure.placement.LivedLayout;
import limbway.reports.measure.placement.PlacedLayout;
import limbway.reports.measure.placement.PlacingCriteria;
import limbway.reports.words.Figures;
import limbway.reports.words.PageText;
import limbway.sim.experiment.placement.PlacingContest;

/** A placing as one HTML page that needs no other file, no script and no network. */
public final class PlacePage {

    private static final List<String> DOUBTFUL = List.of(
            "The guarantee is about the layouts that were lived in, and about a best that leads by as much as was asked "
                    + "for. One that was left out by the expected travel may be better; the table tells both figures, so that it can be seen how well the first predicts the second.",
            "It is about chance, not about the model: with other assumptions another place may be best. See limbway screen and "
                    + "compare the two layouts.",
            "Expected travel takes each animal to the place that costs it least, with all doors open. Ranks, queues and appetite "
                    + "come in with the simulation only.",
            "More travel off the ground may cost an animal more energy or more waiting: look at its column.",
            "Whether a keeper can fill what hangs there, whether it can be fixed there and what it weighs is yours to judge.");

    private PlacePage() {}

    /**
     * Writes the page.
     *
     * @param report what to tell
     * @return HTML, ending with a line end; the same report gives the same text
     */
    public static String html(PlaceReport report) {
        Html html = Html.page("Where places should be: " + report.info().title() + ", "
                + report.info().layout());
        html.close("header").open("main");
        html.element("h2 id=\"answer\"", "The answer");
        html.element("p class=\"answer\"", PlaceText.sentence(report));
        html.paragraph(PlaceText.heldUp(report));
        html.paragraph(PlaceText.chances(report));
        html.paragraph(PlaceText.guarantee(report));
        html.paragraph("To write under changes of a variant:");
        html.open("ul");
        lines(report).forEach(line -> html.open("li").element("code", line).close("li"));
        html.close("ul");
        html.open("nav aria-label=\"Contents\"").open("ul");
        html.link("layouts", "The layouts that were lived in");
        html.link("trust", "Where not to trust this");
        html.link("numbers", "Every number used");
        html.link("again", "To place again");
        html.link("cautions", "Before anything is built");
        html.close("ul").close("nav");
        html.element("h2 id=\"layouts\"", "The layouts that were lived in");
        html.paragraph(PlaceText.candidates(report));
        html.figure(pictures(report).get(0), FrontChart.narrow(marks(report), PlaceText.table(report)));
        html.table("Layouts, the best first", PlaceText.table(report));
        html.paragraph(
                "Off the ground: share of travel, by distance, with its 95 % interval over the repetitions. Expected: the "
                        + "same from costs alone, without a simulation, of the trips to and from these places only. Waiting: at "
                        + "food. Moving: energy of it in a day, of the mean animal, then of each; most: in no other of these layouts "
                        + "does this animal spend more. Front: no other layout is as good in travel off the ground, waiting and moving "
                        + "of the mean animal, and better in one. Dropped: "
                        + "its repetitions were enough to leave it out of the choice, so that it was lived in no more.");
        html.element("h2 id=\"trust\"", "Where not to trust this").list(DOUBTFUL);
        html.element("h2 id=\"numbers\"", "Every number used").paragraph(PageText.PARAMETERS);
        html.table("Parameters", TrustSections.parameters(report.info().parameters()));
        again(html, report);
        return html.end();
    }

    /**
     * The change of the best layout.
     *
     * @param report what to tell
     * @return lines to write under {@code changes}
     */
    public static List<String> lines(PlaceReport report) {
        return report.answer().best().placing().lines(report.before());
    }

    /**
     * The pictures of the page, to be written as files too.
     *
     * @param report what to tell
     * @return pictures in the order of the page
     */
    public static List<Picture> pictures(PlaceReport report) {
        return List.of(FrontChart.of(marks(report), PlaceText.table(report)));
    }

    private static List<FrontChart.Mark> marks(PlaceReport report) {
        List<FrontChart.Mark> marks = new ArrayList<>();
        for (PlacedLayout layout : report.answer().layouts()) {
            marks.add(mark(layout.letter(), layout.lived(), layout.onFront() ? 0 : 1));
        }
        marks.add(mark("as it stands", report.answer().before(), 2));
        return marks;
    }

    private static FrontChart.Mark mark(String name, LivedLayout lived, int kind) {
        return new FrontChart.Mark(
                name, lived.mean(PlacingCriteria.ENERGY), 100 * lived.mean(PlacingCriteria.OFF_GROUND), kind);
    }

    private static void again(Html html, PlaceReport report) {
        html.element("h2 id=\"again\"", "To place again");
        var info = report.info();
        html.table(
                "The placing",
                new DataTable(
                        List.of("what", "value"),
                        List.of(
                                List.of("scenario", info.scenario()),
                                List.of("SHA-256 of the scenario", info.sha256Hex()),
                                List.of("layout", info.layout()),
                                List.of("seed", Integer.toString(info.settings().seed())),
                                List.of(
                                        "first repetitions of each layout",
                                        Figures.count(info.settings().replications())),
                                List.of("budget of repetitions", Figures.count(info.budget())),
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
        html.paragraph(
                "The best is selected by the procedure of Kim and Nelson 2001, doi 10.1145/502109.502111: all layouts live "
                        + "under the same chance, and one is dropped as soon as enough is known to leave it out. Who goes where was counted "
                        + "in repetitions 1 to " + PlacingContest.COUNTED + ", the selection lives in those from "
                        + Figures.count(PlacingContest.CONTEST_FIRST) + " on, the check in those from "
                        + Figures.count(PlacingContest.FRESH_FIRST)
                        + " on: none serves twice.");
        if (!info.notes().isEmpty()) {
            html.element("h3", "Remarks on the scenario")
                    .list(info.notes().stream().map(Phrases::sentence).toList());
        }
    }
}
