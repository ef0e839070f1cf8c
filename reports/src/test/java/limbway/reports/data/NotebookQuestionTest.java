package limbway.reports.data;

import java.time.LocalDate;

import org.junit.jupiter.api.Test;

import limbway.sim.experiment.RunSettings;

import static org.junit.jupiter.api.Assertions.assertEquals;

class NotebookQuestionTest {

    private static String line(int replications, String between, String is) {
        return new NotebookQuestion(between, is)
                .says("limbway", "1.0")
                .lives(new RunSettings(7, replications, 3, LocalDate.of(2026, 6, 1), 2, 1))
                .has("threshold", 2.0)
                .line();
    }

    @Test
    void allThatDecidesStandsInOneLine() {
        assertEquals("limbway; 1.0; seed 7; days 3; warm-up 1; date 2026-06-01; threshold 2.0", line(5, "; ", " "));
        assertEquals("limbway 1.0 seed=7 days=3 warm-up=1 date=2026-06-01 threshold=2.0", line(5, " ", "="));
    }

    @Test
    void moreReplicationsAreNoOtherQuestion() {
        assertEquals(line(5, " ", " "), line(50, " ", " "));
    }
}
