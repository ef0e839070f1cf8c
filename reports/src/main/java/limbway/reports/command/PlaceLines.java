package limbway.reports.command;

import java.util.List;
import java.util.Locale;

import limbway.reports.measure.placement.PlacedLayout;
import limbway.reports.page.PlacePage;
import limbway.reports.page.PlaceReport;
import limbway.reports.page.PlaceText;
import limbway.reports.words.Figures;
import limbway.reports.words.WrappedLines;

/** The answer of a placing as lines of a terminal. */
final class PlaceLines {

    private static final int MOST_ROWS = 10;

    private final WrappedLines lines = new WrappedLines();

    private PlaceLines() {}

    static List<String> of(PlaceReport report) {
        PlaceLines text = new PlaceLines();
        text.add(PlaceText.sentence(report));
        text.add(PlaceText.heldUp(report));
        text.add(PlaceText.chances(report));
        text.add(PlaceText.guarantee(report));
        text.add("To write under changes of a variant:");
        PlacePage.lines(report).forEach(line -> text.lines.row("  - " + line));
        text.table(report);
        text.add(PlaceText.candidates(report));
        return text.lines.all();
    }

    private void table(PlaceReport report) {
        lines.row(String.format(
                Locale.ROOT, "  %-6s %-24s %8s %5s  %s", "layout", "off the ground", "expected", "front", "places"));
        List<PlacedLayout> shown =
                report.answer().layouts().stream().limit(MOST_ROWS).toList();
        for (PlacedLayout layout : shown) {
            lines.row(String.format(
                    Locale.ROOT,
                    "  %-6s %-24s %8s %5s  %s",
                    layout.letter(),
                    PlaceText.share(layout.lived()),
                    Figures.percent(layout.expected().offGround()),
                    layout.onFront() ? "yes" : "no",
                    PlaceText.places(report, layout)));
        }
        lines.row(String.format(
                Locale.ROOT,
                "  %-6s %-24s %8s %5s  %s",
                "now",
                PlaceText.share(report.answer().before()),
                "",
                "",
                "as it stands"));
    }

    private void add(String text) {
        lines.add(text);
    }
}
