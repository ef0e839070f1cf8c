package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import limbway.reports.chart.DataTable;
import limbway.reports.measure.Aspect;
import limbway.reports.measure.Measures;
import limbway.reports.measure.NeedsAlone;
import limbway.reports.words.Figures;
import limbway.reports.words.PageText;

/** How much of the answer rests on what places are worth beyond needs and energy. */
final class WorthSection {

    private WorthSection() {}

    static void write(Html html, Report report) {
        html.element("h2 id=\"worth\"", "With and without the worth of places");
        if (!report.info().worth()) {
            html.paragraph(PageText.WORTH_OFF);
            return;
        }
        html.paragraph(PageText.WORTH);
        List<List<String>> rows = new ArrayList<>();
        for (NeedsAlone alone : report.alone()) {
            Stream.concat(Stream.of(report.measures()), report.others().stream())
                    .filter(layout -> layout.layout().equals(alone.layout()))
                    .forEach(layout -> rows.add(row(layout, alone)));
        }
        if (!rows.isEmpty()) {
            html.table(
                    "With and without the worth of places",
                    new DataTable(
                            List.of(
                                    "layout",
                                    "off the ground by distance, with",
                                    "off the ground, without",
                                    "waking time above "
                                            + Figures.metres(report.info().thresholdM()) + ", with",
                                    "waking time, without"),
                            rows));
        }
    }

    private static List<String> row(Measures with, NeedsAlone without) {
        return List.of(
                with.layout(),
                Phrases.share(with.offGround().overall().by(Aspect.DISTANCE)),
                Phrases.share(without.offGround().overall().by(Aspect.DISTANCE)),
                Phrases.share(with.elevated().share()),
                Phrases.share(without.elevated().share()));
    }
}
