package limbway.reports.lesson;

import java.util.Optional;

import limbway.reports.words.LessonText;

/** Says why {@link TripChoice} took this trip: before the prediction without telling which way it goes, after it in full. */
final class ChoiceReason {

    private ChoiceReason() {}

    /** What can be said before the prediction; empty where somebody named the trip or nothing turns it. */
    static Optional<Block> before(LessonSource source) {
        if (!isChosen(source)) {
            return Optional.empty();
        }
        return isTurned(source, false)
                ? Optional.of(new Block.Words(LessonText.CHOSEN_FOR_CHANGE))
                : isTurned(source, true)
                        ? Optional.of(new Block.Words(LessonText.CHOSEN_FOR_LAYOUT))
                        : Optional.empty();
    }

    /** What can be said after it; empty where somebody named the trip. */
    static Optional<Block> after(LessonSource source) {
        if (!isChosen(source)) {
            return Optional.empty();
        }
        return Optional.of(new Block.Words(
                isTurned(source, false)
                        ? LessonText.MOST_ON_GROUND_BY_CHANGE
                        : isTurned(source, true) ? LessonText.MOST_ON_GROUND_BY_LAYOUT : LessonText.MOST_ON_GROUND));
    }

    private static boolean isChosen(LessonSource source) {
        return !source.isWished()
                && source.trip()
                        .filter(trip -> trip.takesGround() && trip.tripsPerDay() > 0)
                        .isPresent();
    }

    private static boolean isTurned(LessonSource source, boolean byLayout) {
        return source.trip().stream()
                .flatMap(trip -> source.changes().stream().filter(change -> ChangeHunt.turns(trip, change)))
                .anyMatch(change -> change.isLayout() == byLayout);
    }
}
