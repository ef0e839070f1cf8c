package limbway.sim.chance;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/**
 * Ten animals share three places that yield 6, 3 and 1: how they spread when each in turn chooses anew with the noise of
 * our draws.
 *
 * <p>Choosing place j with probability proportional to exp(beta r/n), itself counted, leaves the spread with probability
 * proportional to N!/product of n! times exp(beta times the sum of r H(n)), H the harmonic numbers: the potential of the
 * game (Rosenthal 1973, doi 10.1007/BF01737559) under logit choice (Blume 1993, doi 10.1006/game.1993.1023), both from
 * memory. Without noise it is the ideal free distribution 6, 3, 1 (Fretwell and Lucas 1969, Acta Biotheoretica 19:16).
 */
class IdealFreeTest {

    private static final int ANIMALS = 10;
    private static final double[] YIELD = {6, 3, 1};
    private static final int BATCHES = 100;
    private static final int ROUNDS_PER_BATCH = 1000;
    private static final double STANDARD_ERRORS = 4;

    private static double[] exact(double beta) {
        double[] weights = new double[YIELD.length + 1];
        for (int a = 0; a <= ANIMALS; a++) {
            for (int b = 0; a + b <= ANIMALS; b++) {
                int[] n = {a, b, ANIMALS - a - b};
                double log = logFactorial(ANIMALS);
                for (int j = 0; j < n.length; j++) {
                    log += beta * YIELD[j] * harmonic(n[j]) - logFactorial(n[j]);
                }
                double weight = StrictMath.exp(log);
                weights[YIELD.length] += weight;
                for (int j = 0; j < n.length; j++) {
                    weights[j] += weight * n[j];
                }
            }
        }
        return new double[] {weights[0] / weights[3], weights[1] / weights[3], weights[2] / weights[3]};
    }

    private static double logFactorial(int n) {
        double sum = 0;
        for (int k = 2; k <= n; k++) {
            sum += StrictMath.log(k);
        }
        return sum;
    }

    private static double harmonic(int n) {
        double sum = 0;
        for (int k = 1; k <= n; k++) {
            sum += 1.0 / k;
        }
        return sum;
    }

    /** Means of batches at each place; the first batch, which still remembers the start, is left out. */
    private static double[][] lived(double beta, boolean countsItself) {
        Stream[] chances = new Stream[ANIMALS];
        int[] at = new int[ANIMALS];
        for (int i = 0; i < ANIMALS; i++) {
            chances[i] = new Chance(3, 1).stream("animal " + i, Purpose.PLACE);
        }
        long[] keys = {Name.key("hatch"), Name.key("tray"), Name.key("log")};
        int[] n = {ANIMALS, 0, 0};
        double[][] means = new double[BATCHES][YIELD.length];
        for (int round = 0; round < (BATCHES + 1) * ROUNDS_PER_BATCH; round++) {
            for (int i = 0; i < ANIMALS; i++) {
                n[at[i]]--;
                int best = 0;
                double most = Double.NEGATIVE_INFINITY;
                for (int j = 0; j < YIELD.length; j++) {
                    int sharing = countsItself ? n[j] + 1 : Math.max(1, n[j]);
                    double total = beta * YIELD[j] / sharing + chances[i].gumbel(round, keys[j]);
                    if (total > most) {
                        most = total;
                        best = j;
                    }
                }
                at[i] = best;
                n[best]++;
                int batch = round / ROUNDS_PER_BATCH - 1;
                for (int j = 0; batch >= 0 && j < YIELD.length; j++) {
                    means[batch][j] += (double) n[j] / (ROUNDS_PER_BATCH * ANIMALS);
                }
            }
        }
        return means;
    }

    /** The largest deviation of a mean, in standard errors from the spread of the batches, which hold the autocorrelation. */
    private static double worst(double[] expected, double[][] batches) {
        double worst = 0;
        for (int j = 0; j < YIELD.length; j++) {
            double mean = 0;
            for (double[] batch : batches) {
                mean += batch[j] / BATCHES;
            }
            double squares = 0;
            for (double[] batch : batches) {
                squares += (batch[j] - mean) * (batch[j] - mean);
            }
            double error = StrictMath.sqrt(squares / (BATCHES - 1) / BATCHES);
            worst = Math.max(worst, Math.abs(mean - expected[j]) / error);
        }
        return worst;
    }

    @ParameterizedTest
    @CsvSource({
        "0, 3.333, 3.333, 3.333",
        "1, 4.665, 3.243, 2.093",
        "2, 5.190, 3.201, 1.609",
        "8, 5.947, 3.052, 1.001",
        "20, 6.022, 2.988, 0.991"
    })
    @Tag("derived")
    void tenAnimalsSpreadAsTheExactFormulaSays(double beta, double first, double second, double third) {
        double[] exact = exact(beta);
        assertEquals(first, exact[0], 0.0006);
        assertEquals(second, exact[1], 0.0006);
        assertEquals(third, exact[2], 0.0006);
        // a million choices, a hundred batches of a thousand rounds
        double worst = worst(exact, lived(beta, true));
        assertTrue(worst < STANDARD_ERRORS, () -> "beta " + beta + ": " + worst + " standard errors");
    }

    @Test
    void whoForgetsThatItSharesWithOthersIsFound() {
        assertTrue(worst(exact(2), lived(2, false)) > STANDARD_ERRORS);
    }
}
