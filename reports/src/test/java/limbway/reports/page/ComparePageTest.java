package limbway.reports.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.reports.chart.DataTable;
import limbway.reports.chart.DifferenceChart;
import limbway.reports.chart.Picture;
import limbway.reports.data.CompareInfo;
import limbway.reports.measure.criterion.Criteria;
import limbway.reports.measure.criterion.DesignCriterion;
import limbway.sim.animal.DaySettings;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.comparison.Compared;
import limbway.sim.experiment.comparison.Comparison;
import limbway.sim.experiment.statistics.StoppingRule;
import limbway.sim.experiment.trial.Notebook;
import limbway.sim.experiment.trial.Trial;
import limbway.sim.experiment.trial.Trials;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What is said of three layouts whose values are made up, so that every sentence can be checked by hand. */
@Tag("derived")
class ComparePageTest {

    private static final StoppingRule RULE = new StoppingRule(0.02, 0.1, 10, 10);
    private static final RunSettings SETTINGS = new RunSettings(1, 10, 1, LocalDate.of(2026, 3, 21), 1);
    private static final List<DesignCriterion> CRITERIA = new Criteria()
            .all().stream()
                    .filter(c -> List.of(
                                    "offground_distance", "waiting_at_food_min", "energy_balance_kj", "hours_in_heat")
                            .contains(c.name()))
                    .toList();

    /**
     * Off the ground: low 20 and 22 % in turn; high 50 points more than low, give or take one, in a rhythm of its own; twin
     * the same as low; near as high, but 5 points more or less by a slower rhythm. Waiting: high 9 and 11 min, the others 5 and 7.
     * Nothing is known of heat. The balance of energy is near nothing, now above, now below.
     */
    private static double[] values(String layout, int replication) {
        double wave = replication % 2 == 0 ? 1 : -1;
        double other = replication % 4 < 2 ? 1 : -1;
        double low = 0.21 + 0.01 * wave;
        double balanceKj = 20 * other + wave;
        return switch (layout) {
            case "high" -> new double[] {low + 0.5 + 0.01 * other, balanceKj, 10 + wave, Double.NaN};
            case "near" ->
                new double[] {low + 0.49 + (replication <= 5 ? 0.05 : -0.05), balanceKj, 6 + wave, Double.NaN};
            default -> new double[] {low, -balanceKj, 6 + wave, Double.NaN};
        };
    }

    private static Compared compared(StoppingRule rule, String... names) {
        Notebook made = new Notebook() {
            @Override
            public Optional<double[]> find(String key) {
                String[] parts = key.split(" #", -1);
                return Optional.of(values(parts[0], Integer.parseInt(parts[1])));
            }

            @Override
            public void note(String key, double[] values) {
                throw new IllegalStateException("everything is known");
            }
        };
        List<Trial> layouts = new ArrayList<>();
        for (String name : names) {
            layouts.add(new Trial(
                    name,
                    () -> {
                        throw new IllegalStateException("nothing is lived");
                    },
                    DaySettings.standard()));
        }
        return new Comparison(
                        new Trials(List.copyOf(CRITERIA), SETTINGS, made), rule, Set.of("offground_distance"), 10, 1)
                .of(layouts, (done, total) -> {})
                .orElseThrow();
    }

    private static CompareReport report() {
        return report(RULE, "low", "high", "twin");
    }

    private static CompareReport report(StoppingRule rule, String... names) {
        Compared compared = compared(rule, names);
        return new CompareReport(
                new CompareInfo(
                        "made-up.yaml",
                        "Made up",
                        "00ff",
                        compared.layouts(),
                        SETTINGS,
                        rule,
                        List.of("offground_distance"),
                        true,
                        1,
                        "test",
                        "17",
                        List.of(),
                        List.of()),
                CRITERIA,
                compared,
                Optional.of(compared),
                List.of(),
                List.of());
    }

    @Test
    void theSentencesSayWhichIsBetterInWhatAndHowSure() {
        List<String> sentences = CompareText.sentences(report());
        // differences 51 points five times and 49 five times: spread 1.054, standard error 0.333; times Student's
        // 2.262: 0.754
        assertEquals(
                "high has 50 points more of its travel off the ground than low (49.2 to 50.8), Holm-adjusted p < 0.001.",
                sentences.get(1));
        assertEquals(
                "low and twin have exactly the same share of travel off the ground in every repetition.",
                sentences.get(3));
        assertTrue(
                sentences.get(4).contains("All that are told apart above are told apart there too"), sentences.get(4));
        assertEquals(
                "high is not best in everything: waiting for food by animal and day: 10 (9.25 to 10.8) min/day against 6 "
                        + "(5.25 to 6.75) min/day in low. (Holm-adjusted for the 1 measure looked through.)",
                sentences.get(5));
        assertEquals(
                "This rests on 10 repetitions of each layout, after which every difference that was to be known to plus or "
                        + "minus 2 points was.",
                sentences.get(6));
    }

    @Test
    void theScorecardMarksTheBestAndWhatIsExactlyAsGood() {
        List<List<String>> rows = CompareViews.scorecard(report()).rows();
        // layouts by rank: high, low, twin
        assertTrue(rows.get(0).get(2).startsWith("\u25c6 best: 71 %"), rows.toString());
        assertTrue(rows.get(0).get(3).startsWith("21 %"), rows.toString());
        assertTrue(rows.get(2).get(2).startsWith("10 ("), rows.toString());
        assertTrue(rows.get(2).get(3).startsWith("\u25c6 best: 6 ("), rows.toString());
        assertTrue(rows.get(2).get(4).startsWith("\u25c6 best: 6 ("), rows.toString());
        assertEquals("no value", rows.get(3).get(2));
    }

    /** High less near is 1 point with a spread of about 5: chance alone may make that. */
    @Test
    void theScorecardMarksWhatCannotBeToldFromTheBest() {
        List<List<String>> rows =
                CompareViews.scorecard(report(RULE, "low", "high", "near")).rows();
        // layouts by rank: high, near, low
        assertTrue(rows.get(0).get(2).startsWith("\u25c6 best: 71 %"), rows.toString());
        assertTrue(rows.get(0).get(3).startsWith("\u25c7 not told from best: 70 %"), rows.toString());
        assertTrue(rows.get(0).get(4).startsWith("21 %"), rows.toString());
    }

    @Test
    void anAmountThatMayBeBelowNothingIsNotDrawnAsAShareOfItsMean() {
        CompareReport report = report();
        List<String> leftOff = DifferenceChart.leftOff(report.compared(), report.criteria()).stream()
                .map(DesignCriterion::name)
                .toList();
        assertEquals(List.of("energy_balance_kj"), leftOff);
        String words = CRITERIA.stream()
                .filter(c -> c.name().equals("energy_balance_kj"))
                .findFirst()
                .orElseThrow()
                .words();
        String page = ComparePage.html(report);
        assertTrue(page.contains("Not drawn, because they may be below 0"), page);
        String chart = page.substring(page.indexOf("<figure>"), page.indexOf("<figcaption>"));
        String first = words.substring(0, words.indexOf(' '));
        assertFalse(chart.contains(">" + first), chart);
        assertTrue(chart.contains(">waiting"), chart);
    }

    /** A telephone held upright shows 390 px, less 16 px of margin at either side. */
    @Test
    void theDifferencesAreDrawnForATelephoneToo() {
        CompareReport report = report();
        Picture narrow = DifferenceChart.narrow(
                report.compared(),
                report.criteria(),
                report.ranked(),
                report.alone(),
                CompareViews.differences(report.compared(), report.criteria()));
        assertTrue(narrow.widthPx() <= 390 - 2 * 16, "width: " + narrow.widthPx());
        String page = ComparePage.html(report);
        assertTrue(page.contains("<div class=\"narrow\""), page);
        assertTrue(page.contains("<div class=\"scroll broad\""), page);
    }

    /** Half a width of 0.8 points in 10 repetitions, and a ten-thousandth of a point is asked for. */
    @Test
    void whatNobodyCanMakeIsNotCounted() {
        String stopped = CompareText.stopped(report(new StoppingRule(1e-6, 0.1, 10, 10), "low", "high", "twin"));
        assertTrue(
                stopped.endsWith(
                        "That would take more than a million repetitions; ask for a wider half-width (--precision)."),
                stopped);
    }

    @Test
    void aFurtherPartOfTheAnswerIsSaidAndShown() {
        Supplement worlds = new Supplement(
                "plausible_worlds",
                "Plausible worlds",
                List.of("It holds in 94 % of them."),
                List.of(),
                Map.of("Worlds", new DataTable(List.of("world", "winner"), List.of(List.of("1", "high")))),
                Map.of("held", 0.94),
                List.of());
        CompareReport more = report().with(worlds);
        List<String> sentences = CompareText.sentences(more);
        assertEquals("It holds in 94 % of them.", sentences.get(sentences.size() - 1));
        String page = ComparePage.html(more);
        assertTrue(page.contains("<h2 id=\"plausible_worlds\">Plausible worlds</h2>"));
        assertTrue(page.contains("href=\"#plausible_worlds\""));
        assertTrue(page.contains("<caption>Worlds</caption>"));
        assertTrue(page.contains("Not known in any two layouts"), "heat is not known");
    }
}
