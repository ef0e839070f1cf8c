package limbway.reports.lesson;

import java.util.ArrayList;
import java.util.List;

import limbway.reports.measure.Aspect;
import limbway.reports.measure.Measures;
import limbway.reports.words.FlipText;
import limbway.reports.words.IntervalText;
import limbway.reports.words.LessonAnswers;
import limbway.reports.words.LessonSentence;
import limbway.reports.words.LessonText;
import limbway.reports.words.MendText;
import limbway.reports.words.PageText;
import limbway.reports.words.ReasonText;

/** What the model cannot tell, and what the reader takes away. */
final class ClosingSteps {

    private static final int LINES = 9;

    private ClosingSteps() {}

    static void add(LessonSource source, Lesson.Draft draft) {
        draft.add(limits(source));
        draft.add(own(source));
    }

    private static Step limits(LessonSource source) {
        List<AnswerChoice> choices = new ArrayList<>();
        for (LessonAnswers.Claim claim : LessonAnswers.Claim.values()) {
            choices.add(AnswerChoice.of(claim.words(), claim.isRight(), claim.feedback()));
        }
        List<Block> after = new ArrayList<>();
        String alone = source.alone()
                .offGround()
                .overall()
                .by(Aspect.DISTANCE)
                .map(i -> IntervalText.percent(i.mean(), i.lo(), i.hi()))
                .orElse("");
        String together = DayStep.share(source.taught());
        if (!alone.isEmpty() && !together.isEmpty()) {
            after.add(new Block.Words(LessonSentence.worth(source.taught().layout(), together, alone)));
        }
        source.trip().filter(trip -> trip.ways().offGround().isPresent()).ifPresent(trip -> {
            after.add(new Block.Words(LessonText.HOW_FIRM));
            after.add(new Block.Points(FlipText.firmness(source.turns()).stream()
                    .map(LessonSentence::sentence)
                    .toList()));
        });
        after.add(new Block.Words(LessonText.DOUBTFUL));
        after.add(new Block.Points(PageText.DOUBTFUL));
        return new Step.Asked(
                "limits",
                LessonText.LIMITS,
                List.of(new Block.Words(LessonText.BEFORE_LIMITS)),
                List.of(new Question("limits", LessonText.WHICH_CLAIM, choices, LessonText.CLAIM_ANSWER)),
                after);
    }

    private static Step own(LessonSource source) {
        List<String> summary = new ArrayList<>();
        source.trip().ifPresent(trip -> {
            summary.add(LessonSentence.sentence(ReasonText.sentence(trip.ways(), trip.reason(), trip.body())));
            if (trip.takesGround()) {
                summary.add(LessonSentence.toTry(MendText.of(trip.reason(), trip.body())));
            }
            source.changes().stream()
                    .filter(change -> ChangeHunt.turns(trip, change))
                    .findFirst()
                    .ifPresent(change -> summary.add(LessonSentence.turned(
                            change.words(),
                            trip.takesGround(),
                            change.costs().overMilliJ(),
                            change.costs().offMilliJ())));
        });
        for (Measures layout : source.layouts()) {
            String share = DayStep.share(layout);
            if (!share.isEmpty()) {
                summary.add(LessonSentence.dayOf(layout.layout(), share));
            }
        }
        summary.addAll(LessonText.TAKE_AWAY);
        String prompt = source.trip()
                .map(trip -> LessonSentence.explain(trip.body(), trip.from(), trip.to(), trip.takesGround()))
                .orElse(LessonText.EXPLAIN_ENCLOSURE);
        return new Step.Written(
                "own-words",
                LessonText.OWN_WORDS,
                List.of(new Block.Words(LessonText.BEFORE_WRITING), new Block.Points(LessonText.HINTS)),
                prompt,
                LINES,
                List.of(new Block.Words(LessonText.SUMMARY), new Block.Points(summary)));
    }
}
