package limbway.reports.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import limbway.reports.chart.DataTable;
import limbway.reports.chart.ShareChart;
import limbway.reports.measure.Aspect;
import limbway.reports.measure.LayoutDifference;
import limbway.reports.measure.Measures;
import limbway.reports.words.IntervalText;
import limbway.reports.words.LessonSentence;
import limbway.reports.words.LessonText;
import limbway.sim.experiment.statistics.Interval;

/** The whole day: in which layout more of the travel is off the ground, from a short run under the same chance. */
final class DayStep {

    private DayStep() {}

    static void add(LessonSource source, Lesson.Draft draft) {
        if (source.layouts().size() < 2) {
            draft.leaveOut(LessonText.DAY, LessonText.ONE_LAYOUT);
            return;
        }
        List<Measures> travelled = source.layouts().stream()
                .filter(layout -> !share(layout).isEmpty())
                .toList();
        if (travelled.size() < 2) {
            draft.leaveOut(LessonText.DAY, LessonText.NO_TRAVEL);
            return;
        }
        List<Measures> ranked = new ArrayList<>(travelled);
        ranked.sort(Comparator.comparingDouble(layout -> -mean(layout)));
        int repetitions = source.taught().outcome().journals().size();
        int days = source.taught().outcome().settings().days();
        draft.add(new Step.Asked(
                "day",
                LessonText.DAY,
                List.of(
                        new Block.Words(LessonSentence.run(repetitions, days)),
                        new Block.Points(travelled.stream()
                                .map(layout -> LessonSentence.layout(
                                        layout.layout(),
                                        layout.outcome().habitat().layout().note()))
                                .toList())),
                List.of(question(travelled, ranked)),
                List.of(
                        new Block.Shown(ShareChart.byLayout(ranked)),
                        new Block.Tabled(LessonText.DAY_TABLE, table(source.taught(), ranked)),
                        new Block.Words(LessonText.INTERVALS))));
    }

    private static Question question(List<Measures> layouts, List<Measures> ranked) {
        Measures best = ranked.get(0);
        Optional<Interval> lead = LayoutDifference.of(ranked.get(1), best, Aspect.DISTANCE);
        boolean isSure = lead.filter(DayStep::isAboveNothing).isPresent();
        String answer = LessonSentence.best(
                best.layout(), share(best), ranked.get(1).layout(), share(ranked.get(1)), points(lead), isSure);
        List<AnswerChoice> choices = new ArrayList<>();
        for (Measures layout : layouts) {
            boolean right = isSure && layout.layout().equals(best.layout());
            choices.add(AnswerChoice.of(layout.layout(), right, LessonSentence.verdict(right, answer)));
        }
        choices.add(AnswerChoice.of(LessonText.CANNOT_TELL, !isSure, LessonSentence.verdict(!isSure, answer)));
        return new Question("day", LessonText.WHICH_LAYOUT, choices, answer);
    }

    /** With one repetition no interval is known, and nothing is sure. */
    private static boolean isAboveNothing(Interval lead) {
        return lead.lo().isPresent() && lead.lo().getAsDouble() > 0;
    }

    private static String points(Optional<Interval> difference) {
        return difference
                .map(i -> IntervalText.points(i.mean(), i.lo(), i.hi()))
                .orElse(LessonText.NOT_KNOWN);
    }

    private static DataTable table(Measures taught, List<Measures> ranked) {
        List<List<String>> rows = new ArrayList<>();
        for (Measures layout : ranked) {
            boolean same = layout.layout().equals(taught.layout());
            rows.add(List.of(
                    layout.layout(),
                    share(layout),
                    same ? LessonText.THE_SAME : points(LayoutDifference.of(taught, layout, Aspect.DISTANCE))));
        }
        return new DataTable(LessonSentence.dayHeaders(taught.layout()), rows);
    }

    private static double mean(Measures layout) {
        return layout.offGround().overall().by(Aspect.DISTANCE).orElseThrow().mean();
    }

    /** The share by distance with its interval; empty where nobody travelled. */
    static String share(Measures layout) {
        return layout.offGround()
                .overall()
                .by(Aspect.DISTANCE)
                .map(i -> IntervalText.percent(i.mean(), i.lo(), i.hi()))
                .orElse("");
    }
}
