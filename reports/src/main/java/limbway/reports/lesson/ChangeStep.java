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
                List.of(new Block.Words(LessonText.BEFORE_CHANGING)),
                List.of(question(trip, changes, turning)),
                after(source, trip, turning)));
    }

    private static Question question(TaughtTrip trip, List<TriedChange> changes, List<TriedChange> turning) {
        List<AnswerChoice> choices = new ArrayList<>();
        for (TriedChange change : changes) {
            choices.add(new AnswerChoice(
                    change.words(),
                    turning.contains(change),
                    feedback(change, turning.contains(change)),
                    Optional.of(change.costs()),
                    change.line()));
        }
        choices.add(AnswerChoice.of(
                LessonText.NONE_OF_THESE,
                turning.isEmpty(),
                LessonSentence.none(turning.isEmpty(), trip.takesGround())));
        return new Question(
                "change",
                LessonSentence.whichTurns(trip.body(), trip.from(), trip.to(), trip.takesGround()),
                choices,
                LessonSentence.turning(turning.stream().map(TriedChange::words).toList(), trip.takesGround()));
    }

    private static String feedback(TriedChange change, boolean turns) {
        Costs costs = change.costs();
        return LessonSentence.changed(turns, costs.overMilliJ(), costs.offMilliJ(), costs.offGroundShare());
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
