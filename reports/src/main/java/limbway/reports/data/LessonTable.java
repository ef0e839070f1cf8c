package limbway.reports.data;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

import limbway.reports.lesson.AnswerChoice;
import limbway.reports.lesson.Costs;
import limbway.reports.lesson.Lesson;
import limbway.reports.lesson.Question;
import limbway.reports.lesson.Step;

/** The questions of a lesson as a table. */
public final class LessonTable {

    private static final int DECIMALS = 4;

    private LessonTable() {}

    /**
     * One row for each answer that can be chosen.
     *
     * @param lesson a lesson
     * @return the table
     */
    public static CsvTable of(Lesson lesson) {
        CsvTable table = new CsvTable(
                "lesson",
                "one answer that can be chosen",
                List.of(
                        Field.whole("step", "number of the step, from 1"),
                        Field.text("question", "name of the question"),
                        Field.text("asked", "the question"),
                        Field.whole("choice", "number of the answer, from 1"),
                        Field.text("answer", "the answer"),
                        Field.yesNo("right", "whether it is right"),
                        Field.text("feedback", "what is said to whoever chose it"),
                        Field.whole(
                                "over_ground_mj",
                                "where the answer is a change: cheapest way over the ground then [mJ]; empty where there is none"),
                        Field.whole(
                                "off_ground_mj",
                                "where the answer is a change: cheapest way off the ground then [mJ]; empty where there is none"),
                        Field.number(
                                "p_offground",
                                "where the answer is a change: share of such trips off the ground then [1]"),
                        Field.text("line", "the change as a line of a scenario")));
        for (int number = 1; number <= lesson.steps().size(); number++) {
            if (lesson.steps().get(number - 1) instanceof Step.Asked asked) {
                for (Question question : asked.questions()) {
                    rows(table, number, question);
                }
            }
        }
        return table;
    }

    private static void rows(CsvTable table, int step, Question question) {
        for (int i = 0; i < question.choices().size(); i++) {
            AnswerChoice choice = question.choices().get(i);
            Optional<Costs> costs = choice.costs();
            table.row(
                    step,
                    question.id(),
                    question.asked(),
                    i + 1,
                    choice.words(),
                    choice.isRight(),
                    choice.feedback(),
                    costs.map(Costs::overMilliJ).map(LessonTable::whole).orElse(""),
                    costs.map(Costs::offMilliJ).map(LessonTable::whole).orElse(""),
                    costs.map(one -> CsvTable.number(one.offGroundShare(), DECIMALS))
                            .orElse(""),
                    choice.line());
        }
    }

    private static String whole(OptionalLong milliJ) {
        return milliJ.isPresent() ? Long.toString(milliJ.getAsLong()) : "";
    }
}
