package limbway.reports.page;

import java.util.List;
import java.util.Optional;

import limbway.reports.chart.DataTable;
import limbway.reports.lesson.AnswerChoice;
import limbway.reports.lesson.Block;
import limbway.reports.lesson.Lesson;
import limbway.reports.lesson.Question;
import limbway.reports.lesson.Step;
import limbway.reports.words.LessonSentence;
import limbway.reports.words.LessonText;

/** The answers of a lesson on the last page of its handout. */
final class LessonAnswerSheet {

    private LessonAnswerSheet() {}

    static void write(Html html, Lesson lesson) {
        html.open("section class=\"answers\" aria-hidden=\"true\"").element("h2", LessonText.ANSWERS);
        for (Question question : lesson.questions()) {
            html.element("h3", question.asked());
            for (AnswerChoice choice : question.choices()) {
                if (choice.isRight()) {
                    html.open("p")
                            .element("strong", LessonSentence.sentence(choice.words()))
                            .close("p");
                }
            }
            html.paragraph(question.answer());
            changes(question).ifPresent(table -> html.table(LessonText.CHANGES_CHART, table));
        }
        for (Step step : lesson.steps()) {
            if (step instanceof Step.Written written) {
                html.element("h3", LessonText.SUMMARY);
                written.after().forEach(block -> {
                    if (block instanceof Block.Points points) {
                        html.list(points.items());
                    }
                });
            }
        }
        html.close("section");
    }

    /** What every change comes to. */
    private static Optional<DataTable> changes(Question question) {
        List<List<String>> rows = question.choices().stream()
                .filter(choice -> choice.costs().isPresent())
                .map(choice -> LessonSentence.changeRow(
                        choice.words(),
                        choice.costs().get().overMilliJ(),
                        choice.costs().get().offMilliJ(),
                        choice.costs().get().offGroundShare()))
                .toList();
        return rows.isEmpty() ? Optional.empty() : Optional.of(new DataTable(LessonText.CHANGE_HEADERS, rows));
    }
}
