package limbway.reports.page;

import java.util.Optional;

import limbway.reports.chart.EnclosureDrawing;
import limbway.reports.chart.Picture;
import limbway.reports.chart.ShareChart;
import limbway.reports.measure.Aspect;
import limbway.reports.measure.ElevatedTime;
import limbway.reports.measure.Measures;
import limbway.reports.measure.PairUse;
import limbway.reports.measure.Stretch;
import limbway.reports.words.Figures;
import limbway.reports.words.PageText;
import limbway.reports.words.ReasonText;
import limbway.reports.words.ReplayText;
import limbway.sim.experiment.statistics.Interval;

/** The answer in a sentence, the drawing, and the main figure. */
final class AnswerSection {

    private AnswerSection() {}

    static void write(Html html, Report report) {
        Measures measures = report.measures();
        Optional<Interval> distance = measures.offGround().overall().by(Aspect.DISTANCE);
        html.element("h2 id=\"answer\"", "The answer");
        html.open("div class=\"first\"").open("div");
        html.element(
                "p class=\"big\"",
                distance.map(share -> Figures.percent(share.mean()) + " off the ground")
                        .orElse("no travel"));
        html.element("p class=\"answer\"", answer(report, distance));
        html.open("p").element("a href=\"#replay\"", ReplayText.LINK).close("p");
        ground(html, measures);
        ElevatedTime elevated = measures.elevated();
        html.paragraph("Awake, the animals spend " + Phrases.share(elevated.share()) + " of their time more than "
                + Figures.metres(elevated.thresholdM()) + " above the ground.");
        html.figure(ShareChart.byAnimal(measures));
        html.close("div").figure(drawing(measures)).close("div");
        html.paragraph(PageText.TWO_NUMBERS);
        html.paragraph(PageText.INTERVALS);
    }

    static Picture drawing(Measures measures) {
        return EnclosureDrawing.of(
                "enclosure",
                "The enclosure and its travel, layout " + measures.layout(),
                measures.outcome().habitat().layout().enclosure(),
                Stretch.of(measures.outcome()));
    }

    private static String answer(Report report, Optional<Interval> distance) {
        String layout = "In the layout \"" + report.measures().layout() + "\"";
        if (distance.isEmpty()) {
            return layout + " nobody travelled.";
        }
        var overall = report.measures().offGround().overall();
        return layout + ", " + Phrases.share(distance)
                + " of the distance that the group travels is off the ground; by "
                + "time it is " + Phrases.share(overall.by(Aspect.TIME)) + ", by energy "
                + Phrases.share(overall.by(Aspect.ENERGY)) + ".";
    }

    private static void ground(Html html, Measures measures) {
        if (measures.groundUse().isEmpty()) {
            html.paragraph("The ground was not used on any trip.");
            return;
        }
        PairUse most = measures.groundUse().get(0);
        html.paragraph("Of all bodies and trips, the ground is used most by "
                + Figures.one(most.body().name()) + " from "
                + most.from() + " to " + most.to() + ", "
                + Figures.path(most.groundMPerDay().mean()) + " a day: "
                + ReasonText.sentence(most.ways(), most.reason(), most.body()) + ".");
    }
}
