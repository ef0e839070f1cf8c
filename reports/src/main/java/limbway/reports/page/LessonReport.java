package limbway.reports.page;

import java.util.Optional;

import limbway.reports.data.LessonInfo;
import limbway.reports.lesson.Lesson;
import limbway.reports.replay.ReplayLayout;

/**
 * A lesson with what its page needs beside it.
 *
 * @param info how it was made
 * @param lesson its steps
 * @param replay what the player is to show; empty where the trip has no card
 */
public record LessonReport(LessonInfo info, Lesson lesson, Optional<Replay> replay) {

    /**
     * The ways of the trip, to be played.
     *
     * @param layout the layout that is taught
     * @param card number of the card of the trip
     */
    public record Replay(ReplayLayout layout, int card) {}
}
