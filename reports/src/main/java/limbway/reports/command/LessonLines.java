package limbway.reports.command;

import java.util.ArrayList;
import java.util.List;

import limbway.reports.lesson.LeftOut;
import limbway.reports.page.LessonReport;
import limbway.reports.words.Figures;
import limbway.reports.words.LessonSentence;
import limbway.reports.words.LessonText;
import limbway.reports.words.ReasonText;

/** A lesson as lines of a terminal. */
final class LessonLines {

    private LessonLines() {}

    static List<String> of(LessonReport report) {
        List<String> lines = new ArrayList<>();
        report.lesson()
                .trip()
                .ifPresentOrElse(
                        trip -> {
                            lines.add("taught: " + Figures.one(trip.body().name()) + " from " + trip.from() + " to "
                                    + trip.to() + " in "
                                    + report.info().layouts().get(0));
                            lines.add("  " + ReasonText.sentence(trip.ways(), trip.reason(), trip.body()) + ".");
                        },
                        () -> lines.add(LessonText.NO_TRIP_AT_ALL));
        int steps = report.lesson().steps().size();
        int questions = report.lesson().questions().size();
        lines.add(LessonSentence.count(steps, "step") + " with " + LessonSentence.count(questions, "question"));
        for (LeftOut one : report.lesson().leftOut()) {
            lines.add("  left out: " + one.what() + " (" + one.why() + ")");
        }
        return lines;
    }
}
