package limbway.reports.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

import limbway.model.body.LocomotorMode;
import limbway.model.energy.EnergyByPart;
import limbway.model.route.Way;
import limbway.reports.words.Figures;
import limbway.reports.words.LessonAnswers;
import limbway.reports.words.LessonSentence;
import limbway.reports.words.LessonText;
import limbway.reports.words.PartText;
import limbway.reports.words.ReasonText;

/** What decides between both ways: the dearest part, and by how much one wins or what is missing on the other. */
final class WhyStep {

    private static final int MOST_PARTS = 5;
    private static final double MILLI = 1000;
    private static final double[] WRONG_FACTORS = {3, 1 / 3.0, 10};

    private WhyStep() {}

    static void add(TaughtTrip trip, Lesson.Draft draft) {
        List<Question> questions = new ArrayList<>();
        dearest(trip).ifPresent(questions::add);
        decides(trip).ifPresent(questions::add);
        List<Block> after = List.of(
                new Block.Words(LessonSentence.sentence(ReasonText.sentence(trip.ways(), trip.reason(), trip.body()))));
        draft.add(
                questions.isEmpty()
                        ? new Step.Told("why", LessonText.WHY, after)
                        : new Step.Asked(
                                "why",
                                LessonText.WHY,
                                List.of(new Block.Words(LessonText.BEFORE_WHY)),
                                questions,
                                after));
    }

    /** Which part of the cheaper way costs most; none where it has one part only, or two are dearest. */
    private static Optional<Question> dearest(TaughtTrip trip) {
        EnergyByPart energy = trip.ways().cheapest().energy();
        List<LocomotorMode> byCost = new ArrayList<>(PartText.asTold());
        byCost.removeIf(mode -> energy.part(mode) == 0);
        byCost.sort(Comparator.comparingLong(mode -> -energy.part(mode)));
        if (byCost.size() < 2 || energy.part(byCost.get(0)) == energy.part(byCost.get(1))) {
            return Optional.empty();
        }
        LocomotorMode most = byCost.get(0);
        List<LocomotorMode> offered = byCost.subList(0, Math.min(MOST_PARTS, byCost.size()));
        List<AnswerChoice> choices = PartText.asTold().stream()
                .filter(offered::contains)
                .map(mode -> AnswerChoice.of(
                        PartText.doing(mode),
                        mode == most,
                        LessonSentence.verdict(
                                mode == most,
                                PartText.doing(most),
                                LessonSentence.part(mode, energy.part(mode), energy.totalMilliJ()))))
                .toList();
        return Optional.of(new Question(
                "dearest-part",
                LessonSentence.whichPart(trip.takesGround()),
                choices,
                LessonSentence.part(most, energy.part(most), energy.totalMilliJ())));
    }

    private static Optional<Question> decides(TaughtTrip trip) {
        Optional<Way> over = trip.ways().overGround();
        Optional<Way> off = trip.ways().offGround();
        if (over.isPresent() && off.isPresent()) {
            return margin(trip.takesGround(), over.get().milliJ(), off.get().milliJ());
        }
        return off.isEmpty() ? Optional.of(missing(trip)) : Optional.empty();
    }

    /** By how many joules one way wins, among others that cannot be taken for it. */
    private static Optional<Question> margin(boolean groundWins, long overMilliJ, long offMilliJ) {
        double wonJ = Math.abs(overMilliJ - offMilliJ) / MILLI;
        String right = Figures.energy(wonJ);
        TreeMap<Double, String> offered = new TreeMap<>();
        offered.put(wonJ, right);
        for (double factor : WRONG_FACTORS) {
            if (!offered.containsValue(Figures.energy(factor * wonJ))) {
                offered.put(factor * wonJ, Figures.energy(factor * wonJ));
            }
        }
        if (offered.size() < 2) {
            return Optional.empty();
        }
        String answer = LessonSentence.margin(groundWins, overMilliJ, offMilliJ);
        List<AnswerChoice> choices = offered.values().stream()
                .map(words -> AnswerChoice.of(
                        words, words.equals(right), LessonSentence.verdict(words.equals(right), answer)))
                .toList();
        return Optional.of(new Question("margin", LessonSentence.byHowMuch(groundWins), choices, answer));
    }

    private static Question missing(TaughtTrip trip) {
        LessonAnswers.Missing right = LessonAnswers.missing(trip.reason());
        String answer = LessonSentence.because(ReasonText.because(trip.reason(), trip.body()));
        List<AnswerChoice> choices = new ArrayList<>();
        for (LessonAnswers.Missing one : LessonAnswers.Missing.values()) {
            choices.add(AnswerChoice.of(
                    one.words(), one == right, LessonSentence.verdict(one == right, right.words(), answer)));
        }
        return new Question("missing", LessonText.WHAT_IS_MISSING, choices, answer);
    }
}
