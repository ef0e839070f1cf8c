package limbway.reports.command;

import java.io.PrintWriter;

import limbway.reports.measure.Aspect;
import limbway.reports.measure.ElevatedTime;
import limbway.reports.measure.Measures;
import limbway.reports.page.HungerText;
import limbway.reports.page.Report;
import limbway.reports.words.Figures;
import limbway.reports.words.IntervalText;
import limbway.sim.experiment.statistics.Interval;

/** The answer of a run on the command line. */
final class RunLines {

    private RunLines() {}

    static void print(PrintWriter answer, Report report) {
        Measures measures = report.measures();
        answer.println(measures.layout() + ": "
                + measures.offGround()
                        .overall()
                        .by(Aspect.DISTANCE)
                        .map(share -> percent(share) + " of the distance travelled is off the ground"
                                + (report.info().worth() ? "" : ", with needs and energy alone"))
                        .orElse("nobody travelled"));
        report.alone().stream()
                .findFirst()
                .ifPresent(alone -> answer.println(
                        "with needs and energy alone, without what places are assumed to be worth beyond them: "
                                + alone.offGround()
                                        .overall()
                                        .by(Aspect.DISTANCE)
                                        .map(RunLines::percent)
                                        .orElse("nobody travelled")));
        if (report.audit().mustMend()) {
            answer.println("but the animals cannot have all they need in this layout: see limbway check");
        }
        HungerText.of(measures.energy()).ifPresent(answer::println);
        ElevatedTime elevated = measures.elevated();
        elevated.share()
                .ifPresent(share -> answer.println(percent(share) + " of waking time is spent more than "
                        + Figures.metres(elevated.thresholdM())
                        + " up (another measure; zoo studies report this one)"));
    }

    private static String percent(Interval share) {
        return IntervalText.percent(share.mean(), share.lo(), share.hi());
    }
}
