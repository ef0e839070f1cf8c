package limbway.reports.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import limbway.model.shade.ShadeYear;
import limbway.reports.chart.ShadeHoursChart;
import limbway.reports.measure.DayShade;
import limbway.reports.words.LessonAnswers;
import limbway.reports.words.LessonSentence;
import limbway.reports.words.LessonText;

/** Shade: at which hours of the hardest day too few rest platforms lie in it. */
final class ShadeStep {

    private static final int HOUR_MIN = 60;

    /** From the first to the last of these hours is called the middle of the day. */
    private static final int NOON_FROM = 10;

    private static final int NOON_TO = 14;

    private ShadeStep() {}

    static void add(LessonSource source, Lesson.Draft draft) {
        if (source.shade().isEmpty()) {
            draft.leaveOut(LessonText.SHADE, LessonText.TOO_FEW_PLATFORMS);
            return;
        }
        ShadeYear year = source.shade().get();
        if (year.sunMinutes() == 0) {
            draft.leaveOut(LessonText.SHADE, LessonText.NO_SUN);
            return;
        }
        List<DayShade> days = DayShade.of(year);
        DayShade hardest = DayShade.hardest(
                days.stream().filter(day -> day.sunMinutes() > 0).toList());
        int number = days.indexOf(hardest);
        List<ShadeHoursChart.Hour> hours = hours(year, number);
        draft.add(new Step.Asked(
                "shade",
                LessonText.SHADE,
                List.of(new Block.Words(LessonSentence.shadeRule(
                        year.platforms().size(), year.rule().atLeast()))),
                List.of(question(year, hardest, hours)),
                List.of(new Block.Shown(ShadeHoursChart.of(
                        "lesson-shade",
                        LessonSentence.shadeChart(hardest.date()),
                        hours,
                        year.platforms().size(),
                        year.rule().atLeast())))));
    }

    /** The hours with sun, each with the fewest platforms in shade at once. */
    private static List<ShadeHoursChart.Hour> hours(ShadeYear year, int day) {
        int perHour = HOUR_MIN / year.calendar().stepMin();
        List<ShadeHoursChart.Hour> hours = new ArrayList<>();
        for (int hour = 0; hour * perHour < year.calendar().slots(); hour++) {
            int[] up = IntStream.range(hour * perHour, (hour + 1) * perHour)
                    .filter(slot -> year.isSunUp(day, slot))
                    .toArray();
            if (up.length > 0) {
                int fewest = IntStream.of(up)
                        .map(slot -> year.shadedCount(day, slot))
                        .min()
                        .orElseThrow();
                hours.add(new ShadeHoursChart.Hour(hour, fewest));
            }
        }
        return hours;
    }

    private static Question question(ShadeYear year, DayShade day, List<ShadeHoursChart.Hour> hours) {
        int wanted = year.rule().atLeast();
        List<Integer> broken = hours.stream()
                .filter(hour -> hour.fewest() < wanted)
                .map(ShadeHoursChart.Hour::hour)
                .toList();
        boolean noon = broken.stream().anyMatch(hour -> hour >= NOON_FROM && hour < NOON_TO);
        boolean edges = broken.stream().anyMatch(hour -> hour < NOON_FROM || hour >= NOON_TO);
        LessonAnswers.ShadeHours right = LessonAnswers.ShadeHours.of(noon, edges);
        String answer = LessonSentence.shadeAnswer(
                day.date(), broken, day.breachMinutes(), day.sunMinutes(), year.breachMinutes());
        List<AnswerChoice> choices = new ArrayList<>();
        for (LessonAnswers.ShadeHours one : LessonAnswers.ShadeHours.values()) {
            choices.add(AnswerChoice.of(
                    one.words(), one == right, LessonSentence.verdict(one == right, right.words(), answer)));
        }
        return new Question("shade", LessonSentence.whichHours(day.date(), wanted), choices, answer);
    }
}
