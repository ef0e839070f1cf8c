package limbway.reports.page;

import java.util.List;

import limbway.reports.chart.EnclosureDrawing;
import limbway.reports.chart.Picture;
import limbway.reports.chart.PictureFormat;
import limbway.reports.measure.Measures;
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
        html.element("h2 id=\"replay\"", ReplayText.HEADING).paragraph(ReplayText.MEANING);
        html.open("div class=\"replay\"").paragraph(ReplayText.FALLBACK);
        Picture picture = picture(measures);
        if (PictureFormat.svg(picture).length() <= LARGEST_PICTURE) {
            html.figure(picture);
        }
        html.close("div");
        String data = ReplayData.json(
                report.info().title(),
                List.of(ReplayLayout.of(measures, report.cards(), report.info().scenario())));
        html.markup("<script type=\"application/json\" class=\"replay-data\">" + data + "</script>\n");
        html.markup(Bundle.markup());
    }

    /** The travel of the repetition that is shown. */
    static Picture picture(Measures measures) {
        Outcome shown = measures.outcome().only(0);
        return EnclosureDrawing.of(
                "repetition",
                "Travel of repetition " + shown.journals().get(0).replication() + ", layout " + measures.layout(),
                shown.habitat().layout().enclosure(),
                Stretch.of(shown));
    }
}
