package limbway.reports.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.reports.chart.DataTable;
import limbway.reports.chart.EnclosureDrawing;
import limbway.reports.chart.WayBars;
import limbway.reports.words.LessonSentence;
import limbway.reports.words.LessonText;

/** Change one thing: which change turns the trip. Each was compiled. */
final class ChangeStep {

    private ChangeStep() {}

    static void add(LessonSource source, Lesson.Draft draft) {
        if (source.trip().isEmpty()) {
            return;
        }
        List<TriedChange> changes = source.changes();
        if (changes.isEmpty()) {
            draft.leaveOut(LessonText.CHANGE, LessonText.NO_CHANGES);
            return;
        }
        TaughtTrip trip = source.trip().get();
        List<TriedChange> turning = changes.stream()
                .filter(change -> ChangeHunt.turns(trip, change))
                .toList();
        draft.add(new Step.Asked(
                "change",
                LessonText.CHANGE,
                List.of(new Block.Words(
                        changes.stream().anyMatch(TriedChange::isLayout)
                                ? LessonText.BEFORE_CHANGING_LAYOUTS
                                : LessonText.BEFORE_CHANGING)),
                List.of(question(trip, changes, turning)),
                after(source, trip, turning)));
    }

    private static Question question(TaughtTrip trip, List<TriedChange> changes, List<TriedChange> turning) {
        List<String> solution = turning.stream().map(TriedChange::words).toList();
        List<AnswerChoice> choices = new ArrayList<>();
        for (TriedChange change : changes) {
            choices.add(new AnswerChoice(
                    change.words(),
                    turning.contains(change),
                    feedback(trip, change, solution),
                    Optional.of(change.costs()),
                    change.line()));
        }
        choices.add(AnswerChoice.of(
                LessonText.NONE_OF_THESE, turning.isEmpty(), LessonSentence.none(solution, trip.takesGround())));
        return new Question(
                "change",
                LessonSentence.whichTurns(trip.body(), trip.from(), trip.to(), trip.takesGround()),
                choices,
                LessonSentence.turning(solution, trip.takesGround()));
    }

    /** What comes of a change, and which others turn the trip: checking once opens the costs of all. */
    private static String feedback(TaughtTrip trip, TriedChange change, List<String> solution) {
        Costs costs = change.costs();
        boolean turns = solution.contains(change.words());
        return LessonSentence.changed(turns, costs.overMilliJ(), costs.offMilliJ(), costs.offGroundShare())
                + (turns
                        ? LessonSentence.alsoTurning(solution.stream()
                                .filter(other -> !other.equals(change.words()))
                                .toList())
                        : " " + LessonSentence.turning(solution, trip.takesGround()));
    }

    private static List<Block> after(LessonSource source, TaughtTrip trip, List<TriedChange> turning) {
        List<WayBars.Row> rows = new ArrayList<>();
        for (TriedChange change : source.changes()) {
            rows.add(new WayBars.Row(change.words(), LessonText.OVER, change.overEnergy()));
            rows.add(new WayBars.Row("", LessonText.OFF, change.offEnergy()));
        }
        List<Block> blocks = new ArrayList<>(List.of(new Block.Words(LessonText.AFTER_CHANGING)));
        if (rows.stream().anyMatch(row -> row.energy().isPresent())) {
            blocks.add(new Block.Shown(WayBars.of("lesson-changes", LessonText.CHANGES_CHART, rows)));
        }
        if (!turning.isEmpty()) {
            TriedChange shown = turning.get(0);
            blocks.add(new Block.Shown(EnclosureDrawing.trip(
                    "lesson-changed",
                    LessonSentence.changedDrawing(shown.words()),
                    shown.enclosure(),
                    shown.over(),
                    shown.off(),
                    List.of(trip.from(), trip.to()),
                    new DataTable(
                            LessonText.CHANGE_HEADERS,
                            source.changes().stream()
                                    .map(change -> LessonSentence.changeRow(
                                            change.words(),
                                            change.costs().overMilliJ(),
                                            change.costs().offMilliJ(),
                                            change.costs().offGroundShare()))
                                    .toList()))));
        }
        return blocks;
    }
}
