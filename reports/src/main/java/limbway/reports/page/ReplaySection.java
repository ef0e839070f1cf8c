package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;

import limbway.reports.chart.EnclosureDrawing;
import limbway.reports.chart.Picture;
import limbway.reports.chart.PictureFormat;
import limbway.reports.measure.Measures;
import limbway.reports.measure.RouteCards;
import limbway.reports.measure.Stretch;
import limbway.reports.replay.Bundle;
import limbway.reports.replay.ReplayData;
import limbway.reports.replay.ReplayLayout;
import limbway.reports.words.ReplayText;
import limbway.sim.experiment.Outcome;

/** One repetition to be watched, or where no script runs, a picture of its travel. */
final class ReplaySection {

    /** A larger picture is left out: the drawing beside the answer shows nearly the same. */
    private static final int LARGEST_PICTURE = 500_000;

    private ReplaySection() {}

    static void write(Html html, Report report) {
        Measures measures = report.measures();
        write(
                html,
                ReplayText.MEANING,
                report.info().title(),
                List.of(picture(measures)),
                List.of(ReplayLayout.of(measures, report.cards(), report.info().scenario())));
    }

    /** The same day in several layouts, side by side. */
    static void write(Html html, CompareReport report) {
        write(
                html,
                ReplayText.SIDE_BY_SIDE,
                report.info().title(),
                pictures(report),
                report.watched().stream()
                        .map(watched -> ReplayLayout.of(
                                watched,
                                RouteCards.withoutFlips(watched.outcome()),
                                report.info().scenario()))
                        .toList());
    }

    private static void write(
            Html html, String meaning, String title, List<Picture> pictures, List<ReplayLayout> layouts) {
        // paper cannot show it
        html.open("section class=\"screen-only\"");
        html.element("h2 id=\"replay\"", ReplayText.HEADING).paragraph(meaning);
        html.open("div class=\"replay\"").paragraph(ReplayText.FALLBACK);
        for (Picture picture : pictures) {
            if (PictureFormat.svg(picture).length() <= LARGEST_PICTURE) {
                html.figure(picture);
            }
        }
        html.close("div");
        html.markup("<script type=\"application/json\" class=\"replay-data\">" + ReplayData.json(title, layouts)
                + "</script>\n");
        html.markup(Bundle.markup()).close("section");
    }

    /** The travel of the repetition that is shown. */
    static Picture picture(Measures measures) {
        return picture(measures, "repetition");
    }

    /** The travel of the repetition that is shown, in each layout. */
    static List<Picture> pictures(CompareReport report) {
        List<Picture> pictures = new ArrayList<>();
        for (Measures watched : report.watched()) {
            pictures.add(picture(watched, "repetition-" + (pictures.size() + 1)));
        }
        return pictures;
    }

    private static Picture picture(Measures measures, String id) {
        Outcome shown = measures.outcome().only(0);
        return EnclosureDrawing.of(
                id,
                "Travel of repetition " + shown.journals().get(0).replication() + ", layout " + measures.layout(),
                shown.habitat().layout().enclosure(),
                Stretch.of(shown));
    }
}
