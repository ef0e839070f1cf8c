package limbway.reports.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A lesson.
 *
 * @param trip the trip that it is about; empty where no two places are joined
 * @param steps its steps in order
 * @param leftOut steps that this enclosure has no data for
 */
public record Lesson(Optional<TaughtTrip> trip, List<Step> steps, List<LeftOut> leftOut) {

    /** Keeps copies of the lists. */
    public Lesson {
        steps = List.copyOf(steps);
        leftOut = List.copyOf(leftOut);
    }

    /** Steps while they are gathered. */
    static final class Draft {

        private final List<Step> steps = new ArrayList<>();
        private final List<LeftOut> leftOut = new ArrayList<>();

        void add(Step step) {
            steps.add(step);
        }

        void leaveOut(String what, String why) {
            leftOut.add(new LeftOut(what, why));
        }
    }

    /**
     * Makes a lesson.
     *
     * @param source what was computed of the enclosure
     * @return its steps, each with data of this enclosure
     */
    public static Lesson of(LessonSource source) {
        Draft draft = new Draft();
        TripSteps.add(source, draft);
        ChangeStep.add(source, draft);
        DayStep.add(source, draft);
        TrapStep.add(source, draft);
        ShadeStep.add(source, draft);
        ClosingSteps.add(source, draft);
        return new Lesson(source.trip(), draft.steps, draft.leftOut);
    }

    /**
     * All questions.
     *
     * @return in the order of the steps
     */
    public List<Question> questions() {
        List<Question> all = new ArrayList<>();
        for (Step step : steps) {
            if (step instanceof Step.Asked asked) {
                all.addAll(asked.questions());
            }
        }
        return all;
    }
}
