package limbway.reports.command;

import java.util.List;
import java.util.Locale;

import limbway.reports.measure.Movers;
import limbway.reports.measure.ScreenedAnswer;
import limbway.reports.page.ScreenReport;
import limbway.reports.page.ScreenText;
import limbway.reports.words.WrappedLines;
import limbway.sim.experiment.screening.Effect;

/** The answer of a screening as lines of a terminal. */
final class ScreenLines {

    private static final int MOST_ROWS = 10;
    private static final String INDENT = "    ";

    private final WrappedLines lines = new WrappedLines();

    private ScreenLines() {}

    static List<String> of(ScreenReport report) {
        ScreenLines text = new ScreenLines();
        text.add(ScreenText.layouts(report) + ": " + ScreenText.sentence(report, ScreenedAnswer.OFF_GROUND));
        text.add(ScreenText.range(report, ScreenedAnswer.OFF_GROUND));
        text.table(report.of(ScreenedAnswer.OFF_GROUND));
        text.add(ScreenText.rule(report.of(ScreenedAnswer.OFF_GROUND)));
        text.add("And for time spent up high: " + ScreenText.sentence(report, ScreenedAnswer.ELEVATED));
        text.add("This rests on " + report.trajectories() + " walks with " + report.evaluations()
                + " points. Each range is what is worth trying, not what is likely.");
        return text.lines.all();
    }

    private void table(Movers movers) {
        if (movers.effects().isEmpty()) {
            return;
        }
        lines.row(String.format(
                Locale.ROOT, "  %-27s %-20s %13s %7s  %s", "name", "range", "effect", "spread", "direction"));
        List<Effect> largest = movers.effects().stream().limit(MOST_ROWS).toList();
        for (List<String> row : ScreenText.table(largest).rows()) {
            lines.row(String.format(
                    Locale.ROOT,
                    "  %-27s %-20s %13s %7s  %s",
                    row.get(5),
                    row.get(1),
                    row.get(2),
                    row.get(3),
                    row.get(4)));
            add(INDENT + row.get(0));
        }
        add("  effect: mean absolute effect in points with its standard error; spread: how unlike the effects are");
    }

    private void add(String text) {
        lines.add(text);
    }
}
