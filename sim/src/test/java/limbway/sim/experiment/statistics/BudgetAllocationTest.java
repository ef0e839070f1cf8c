package limbway.sim.experiment.statistics;

import java.util.Arrays;

import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

/** The ten designs N(i, 6²), i = 0 to 9, of Chen, Lin, Yücesan and Chick 2000, turned so that the greatest is the best. */
class BudgetAllocationTest {

    private static final double[] MEANS = {0, -1, -2, -3, -4, -5, -6, -7, -8, -9};
    private static final double[] DEVIATIONS = deviations();
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private static double[] deviations() {
        double[] six = new double[10];
        Arrays.fill(six, 6);
        return six;
    }

    /** From the two equations of the paper: with weights 1/i², the best has sqrt of the sum of 1/i⁴, 1.0405. */
    @Test
    @Tag("derived")
    void theSharesAreThoseOfTheEquations() {
        double[] shares = BudgetAllocation.shares(MEANS, DEVIATIONS);
        double[] percent = Arrays.stream(shares).map(share -> 100 * share).toArray();
        // half of the last printed digit
        assertArrayEquals(new double[] {40.32, 38.76, 9.69, 4.31, 2.42, 1.55, 1.08, 0.79, 0.61, 0.48}, percent, 0.005);
        assertEquals(1, Arrays.stream(shares).sum(), 1e-12);
    }

    /** Probability that the best has the greatest mean, by one integral over the mean of the best. */
    private static double correct(double total, double[] shares) {
        return new SimpsonIntegrator()
                .integrate(
                        1_000_000,
                        z -> {
                            double best = z * 6 / Math.sqrt(total * shares[0]);
                            double product = NORMAL.density(z);
                            for (int i = 1; i < 10; i++) {
                                product *= NORMAL.cumulativeProbability((best + i) * Math.sqrt(total * shares[i]) / 6);
                            }
                            return product;
                        },
                        -8,
                        8);
    }

    @ParameterizedTest
    @Tag("derived")
    @CsvSource({"500, 0.777, 0.868", "1000, 0.877, 0.985", "2000, 0.952, 0.9995", "200, 0.630, 0.485"})
    void theBestIsFoundAsOftenAsTheIntegralSays(double total, double even, double allocated) {
        double[] tenths = new double[10];
        Arrays.fill(tenths, 0.1);
        // half of the last printed digit
        assertEquals(even, correct(total, tenths), 5.1e-4);
        assertEquals(allocated, correct(total, BudgetAllocation.shares(MEANS, DEVIATIONS)), 5.1e-4);
    }

    @Test
    @Tag("derived")
    void theBudgetForNineteenInTwentyIsAThird() {
        double[] tenths = new double[10];
        Arrays.fill(tenths, 0.1);
        double[] allocated = BudgetAllocation.shares(MEANS, DEVIATIONS);
        // printed as whole replications
        assertEquals(1953, Math.round(budgetFor(0.95, tenths)));
        assertEquals(717, Math.round(budgetFor(0.95, allocated)));
    }

    private static double budgetFor(double probability, double[] shares) {
        double low = 100;
        double high = 10_000;
        while (high - low > 0.01) {
            double middle = (low + high) / 2;
            if (correct(middle, shares) < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    @Test
    void whatHasNoAllocationIsRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> BudgetAllocation.shares(new double[] {1, 1}, new double[] {1, 1}));
        assertThrows(
                IllegalArgumentException.class,
                () -> BudgetAllocation.shares(new double[] {1, 2}, new double[] {1, 0}));
        assertThrows(IllegalArgumentException.class, () -> BudgetAllocation.shares(new double[] {1}, new double[] {1}));
    }
}
