package limbway.reports.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import limbway.reports.measure.placement.PlacedLayout;
import limbway.reports.page.PlacePage;
import limbway.reports.page.PlaceReport;
import limbway.reports.page.PlaceText;
import limbway.reports.words.Figures;

/** The answer of a placing as lines of a terminal. */
final class PlaceLines {

    private static final int WIDTH = 108;
    private static final int MOST_ROWS = 10;
    private static final String INDENT = "    ";

    private final List<String> lines = new ArrayList<>();

    private PlaceLines() {}

    static List<String> of(PlaceReport report) {
        PlaceLines text = new PlaceLines();
        text.add(PlaceText.sentence(report));
        text.add(PlaceText.heldUp(report));
        text.add(PlaceText.chances(report));
        text.add(PlaceText.guarantee(report));
        text.add("To write under changes of a variant:");
        PlacePage.lines(report).forEach(line -> text.lines.add("  - " + line));
        text.table(report);
        text.add(PlaceText.candidates(report));
        return text.lines;
    }

    private void table(PlaceReport report) {
        lines.add(String.format(
                Locale.ROOT, "  %-6s %-24s %8s %5s  %s", "layout", "off the ground", "expected", "front", "places"));
        List<PlacedLayout> shown =
                report.answer().layouts().stream().limit(MOST_ROWS).toList();
        for (PlacedLayout layout : shown) {
            lines.add(String.format(
                    Locale.ROOT,
                    "  %-6s %-24s %8s %5s  %s",
                    layout.letter(),
                    PlaceText.share(layout.lived()),
                    Figures.percent(layout.expected().offGround()),
                    layout.onFront() ? "yes" : "no",
                    PlaceText.places(report, layout)));
        }
        lines.add(String.format(
                Locale.ROOT,
                "  %-6s %-24s %8s %5s  %s",
                "now",
                PlaceText.share(report.answer().before()),
                "",
                "",
                "as it stands"));
    }

    /** A sentence on as many lines as it needs. */
    private void add(String text) {
        String rest = text;
        while (rest.length() > WIDTH) {
            int end = rest.lastIndexOf(' ', WIDTH);
            if (end <= INDENT.length()) {
                break;
            }
            lines.add(rest.substring(0, end));
            rest = INDENT + rest.substring(end + 1);
        }
        lines.add(rest);
    }
}
