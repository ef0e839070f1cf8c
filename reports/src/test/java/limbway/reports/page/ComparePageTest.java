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
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What is said of three layouts whose values are made up, so that every sentence can be checked by hand. */
@Tag("derived")
class ComparePageTest {

    private static final StoppingRule RULE = new StoppingRule(0.02, 0.1, 10, 10);
    private static final RunSettings SETTINGS = new RunSettings(1, 10, 1, LocalDate.of(2026, 3, 21), 1);
    private static final List<DesignCriterion> CRITERIA = new Criteria()
            .all().stream()
                    .filter(c -> List.of("offground_distance", "waiting_at_food_min", "hours_in_heat")
                            .contains(c.name()))
                    .toList();

    /**
     * Off the ground: low 20 and 22 % in turn; high 50 points more than low, give or take one, in a rhythm of its own; twin
     * the same as low. Waiting: high 9 and 11 min, the others 5 and 7. Nothing is known of heat.
     */
    private static double[] values(String layout, int replication) {
        double wave = replication % 2 == 0 ? 1 : -1;
        double other = replication % 4 < 2 ? 1 : -1;
        double low = 0.21 + 0.01 * wave;
        return layout.equals("high")
                ? new double[] {low + 0.5 + 0.01 * other, 10 + wave, Double.NaN}
                : new double[] {low, 6 + wave, Double.NaN};
    }

    private static Compared compared() {
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
        for (String name : List.of("low", "high", "twin")) {
            layouts.add(new Trial(
                    name,
                    () -> {
                        throw new IllegalStateException("nothing is lived");
                    },
                    DaySettings.standard()));
        }
        return new Comparison(
                        new Trials(List.copyOf(CRITERIA), SETTINGS, made), RULE, Set.of("offground_distance"), 10, 1)
                .of(layouts, (done, total) -> {})
                .orElseThrow();
    }

    private static CompareReport report() {
        Compared compared = compared();
        return new CompareReport(
                new CompareInfo(
                        "made-up.yaml",
                        "Made up",
                        "00ff",
                        compared.layouts(),
                        SETTINGS,
                        RULE,
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
        assertTrue(rows.get(1).get(2).startsWith("10 ("), rows.toString());
        assertTrue(rows.get(1).get(3).startsWith("\u25c6 best: 6 ("), rows.toString());
        assertTrue(rows.get(1).get(4).startsWith("\u25c6 best: 6 ("), rows.toString());
        assertEquals("no value", rows.get(2).get(2));
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
