package limbway.sim.experiment.statistics;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import limbway.sim.experiment.statistics.KimNelson.Selected;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class KimNelsonTest {

    private static final double SIGMA = 6;

    /** eta = ((2·0.05/(k-1))^(-2/(n-1)) - 1)/2 worked with a calculator of another make; six figures were printed. */
    @ParameterizedTest
    @Tag("derived")
    @CsvSource({"10, 10, 0.859083, 15.46350", "10, 20, 0.302934, 11.51148", "3, 10, 0.472944, 8.512989"})
    void theConstantsAreThoseOfTheFormula(int systems, int firstStage, double eta, double h2) {
        KimNelson selection = new KimNelson(0.95, 1, firstStage);
        // half of the last printed digit
        assertEquals(eta, selection.eta(systems), 5e-7);
        assertEquals(h2, selection.h2(systems), 5e-6);
    }

    /** Ten designs N(i, 6²): the test problem of Chen, Lin, Yücesan and Chick 2000, here with the greatest as the best. */
    private static KimNelson.Source tenDesigns(long seed, double commonShare) {
        return (system, first, count) -> {
            double[] values = new double[count];
            for (int r = 0; r < count; r++) {
                double own = normal(seed, system + 1, first + r);
                double common = normal(seed, 0, first + r);
                values[r] = -system + SIGMA * (Math.sqrt(commonShare) * common + Math.sqrt(1 - commonShare) * own);
            }
            return Optional.of(values);
        };
    }

    private static double normal(long seed, int stream, int index) {
        SplittableRandom random =
                new SplittableRandom(seed * 1_000_003 + stream * 7_919_777L + index * 104_729L * 65_537);
        return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
    }

    /**
     * The published guarantee: with neighbours one apart and an indifference of one, the best is selected in 95 % of cases at
     * least. Of 500 with p = 0.95, fewer than 463 happen in 1 of 100 cases (binomial, mean 475, sd 4.87).
     */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({"0.0", "0.6"})
    void theStatedProbabilityIsMetOnTheTenDesigns(double commonShare) {
        int correct = 0;
        long used = 0;
        for (int macro = 0; macro < 500; macro++) {
            Selected found = new KimNelson(0.95, 1, 10)
                    .run(10, Integer.MAX_VALUE, tenDesigns(macro, commonShare), 8)
                    .orElseThrow();
            assertTrue(found.reached());
            correct += found.best() == 0 ? 1 : 0;
            used += found.used();
        }
        assertTrue(correct >= 463, correct + " of 500, with " + used / 500 + " replications");
        // a procedure that never drops anybody would need ten times the longest run
        assertTrue(used / 500 < (commonShare > 0 ? 2000 : 4000), "replications: " + used / 500);
    }

    @Test
    void aProcedureThatAllowsTooLittleWouldMissTheStatedProbability() {
        int correct = 0;
        for (int macro = 0; macro < 500; macro++) {
            // an indifference ten times too large makes the allowance vanish at once
            correct += new KimNelson(0.95, 10, 10)
                                    .run(10, Integer.MAX_VALUE, tenDesigns(macro, 0), 8)
                                    .orElseThrow()
                                    .best()
                            == 0
                    ? 1
                    : 0;
        }
        assertTrue(correct < 463, correct + " of 500");
    }

    @Test
    void theJudgementDoesNotDependOnHowManyAreAskedForAtOnce() {
        for (int macro = 0; macro < 20; macro++) {
            Selected one = new KimNelson(0.95, 1, 10)
                    .run(10, 900, tenDesigns(macro, 0.3), 1)
                    .orElseThrow();
            Selected many = new KimNelson(0.95, 1, 10)
                    .run(10, 900, tenDesigns(macro, 0.3), 13)
                    .orElseThrow();
            assertEquals(one, many);
        }
    }

    @Test
    void systemsThatAreTheSameUnderTheSameChanceEndAtOnce() {
        Selected found = new KimNelson(0.95, 0.02, 10)
                .run(3, 1000, (system, first, count) -> tenDesigns(5, 0).values(0, first, count), 4)
                .orElseThrow();
        assertEquals(new Selected(0, List.of(0, 1, 2), true, List.of(10, 10, 10), 10), found);
    }

    @Test
    void aBudgetThatEndsTooSoonIsToldWithWhatItWouldTake() {
        Selected found =
                new KimNelson(0.95, 0.1, 10).run(10, 110, tenDesigns(3, 0), 4).orElseThrow();
        assertFalse(found.reached());
        assertTrue(found.used() <= 110);
        // h² S²/δ² with S² near 72: between half and twice that
        double expected = 15.4635 * 72 / 0.01;
        assertTrue(found.atMost() > expected / 2 && found.atMost() < expected * 4, "at most " + found.atMost());
    }

    @Test
    void oneSystemIsSelectedAndAnEndedSourceEndsIt() {
        assertEquals(
                0,
                new KimNelson(0.95, 1, 10)
                        .run(1, 10, tenDesigns(1, 0), 4)
                        .orElseThrow()
                        .best());
        assertTrue(new KimNelson(0.95, 1, 10)
                .run(2, 100, (system, first, count) -> Optional.empty(), 4)
                .isEmpty());
    }

    @Test
    void settingsOutsideTheirRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new KimNelson(0.5, 1, 10));
        assertThrows(IllegalArgumentException.class, () -> new KimNelson(0.95, 0, 10));
        assertThrows(IllegalArgumentException.class, () -> new KimNelson(0.95, 1, 1));
    }
}
