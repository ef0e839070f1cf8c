package limbway.reports.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Resource;
import limbway.model.route.Way;
import limbway.model.study.Animal;
import limbway.reports.chart.DataTable;
import limbway.reports.chart.EnclosureDrawing;
import limbway.reports.chart.Picture;
import limbway.reports.chart.WayBars;
import limbway.reports.words.LessonAnswers;
import limbway.reports.words.LessonSentence;
import limbway.reports.words.LessonText;

/** The enclosure and its trip: meet, predict, see. What decides is told in {@link WhyStep}. */
final class TripSteps {

    private TripSteps() {}

    static void add(LessonSource source, Lesson.Draft draft) {
        draft.add(meet(source));
        if (source.trip().isEmpty()) {
            for (String title : List.of(LessonText.PREDICT, LessonText.SEE, LessonText.WHY, LessonText.CHANGE)) {
                draft.leaveOut(title, LessonText.NO_TRIP);
            }
            return;
        }
        TaughtTrip trip = source.trip().get();
        draft.add(predict(trip));
        draft.add(see(source, trip));
        WhyStep.add(trip, draft);
    }

    private static Step meet(LessonSource source) {
        Enclosure enclosure = source.habitat().layout().enclosure();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Words(LessonSentence.enclosure(
                source.taught().layout(),
                enclosure.supports().size(),
                enclosure.platforms().size(),
                enclosure.resources().size(),
                source.habitat().animals().size())));
        source.trip().ifPresent(trip -> {
            blocks.add(new Block.Words(LessonSentence.animal(trip.body(), names(source, trip))));
            blocks.add(new Block.Words(LessonSentence.trip(
                    place(enclosure, trip.from()), place(enclosure, trip.to()), trip.motives(), trip.tripsPerDay())));
            ChoiceReason.before(source).ifPresent(blocks::add);
            if (!trip.takesGround()) {
                blocks.add(new Block.Words(
                        source.taught().groundTotals().isEmpty()
                                ? LessonText.NOBODY_ON_GROUND
                                : source.isWished() ? LessonText.THIS_TRIP_STAYS_UP : LessonText.NO_TRIP_TO_TURN));
            }
        });
        if (source.trip().isEmpty()) {
            blocks.add(new Block.Words(LessonText.NO_TRIP_AT_ALL));
        }
        blocks.add(new Block.Shown(EnclosureDrawing.trip(
                "lesson-enclosure",
                LessonText.DRAWING,
                enclosure,
                List.of(),
                List.of(),
                source.trip().map(trip -> List.of(trip.from(), trip.to())).orElse(List.of()),
                places(enclosure))));
        return new Step.Told("meet", LessonText.MEET, blocks);
    }

    private static List<String> names(LessonSource source, TaughtTrip trip) {
        return source.habitat().animals().stream()
                .filter(animal -> animal.body().equals(trip.body()))
                .map(Animal::name)
                .toList();
    }

    private static Resource place(Enclosure enclosure, String id) {
        return enclosure.resources().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static DataTable places(Enclosure enclosure) {
        return new DataTable(
                LessonText.PLACE_HEADERS,
                enclosure.resources().stream().map(LessonSentence::placeRow).toList());
    }

    private static Step predict(TaughtTrip trip) {
        double share = trip.ways().offGroundShare();
        LessonAnswers.Way right = LessonAnswers.taken(share);
        List<AnswerChoice> choices = new ArrayList<>();
        for (LessonAnswers.Way way : LessonAnswers.Way.values()) {
            choices.add(
                    AnswerChoice.of(way.words(), way == right, LessonSentence.predicted(way == right, right, share)));
        }
        Question question = new Question(
                "predict",
                LessonSentence.predict(trip.body(), trip.from(), trip.to()),
                choices,
                LessonSentence.predicted(share, right));
        return new Step.Asked(
                "predict",
                LessonText.PREDICT,
                List.of(new Block.Words(LessonText.BEFORE_PREDICTING)),
                List.of(question),
                List.of());
    }

    private static Step see(LessonSource source, TaughtTrip trip) {
        Enclosure enclosure = source.habitat().layout().enclosure();
        Optional<Way> over = trip.ways().overGround();
        Optional<Way> off = trip.ways().offGround();
        Picture drawing = EnclosureDrawing.trip(
                "lesson-ways",
                LessonSentence.bothWays(trip.from(), trip.to()),
                enclosure,
                ChangeTrials.path(source.habitat().graph(), over),
                ChangeTrials.path(source.habitat().graph(), off),
                List.of(trip.from(), trip.to()),
                new DataTable(
                        LessonText.WAY_HEADERS,
                        List.of(LessonSentence.wayRow(true, over), LessonSentence.wayRow(false, off))));
        List<Block> blocks = new ArrayList<>();
        ChoiceReason.after(source).ifPresent(blocks::add);
        blocks.addAll(List.of(
                new Block.Words(LessonSentence.ways(over, off)),
                new Block.Played(over.isPresent() && off.isPresent() ? LessonText.PLAYED : LessonText.PLAYED_ONE),
                new Block.Shown(drawing)));
        blocks.add(new Block.Words(LessonText.BARS));
        blocks.add(new Block.Shown(WayBars.of(
                "lesson-energy",
                LessonSentence.energyOf(trip.from(), trip.to()),
                List.of(
                        new WayBars.Row("", LessonText.OVER, over.map(Way::energy)),
                        new WayBars.Row("", LessonText.OFF, off.map(Way::energy))))));
        return new Step.Told("see", LessonText.SEE, blocks);
    }
}
