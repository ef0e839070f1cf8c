package limbway.sim.experiment.statistics;

import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.inference.TTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.sim.chance.Stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class PairedDifferenceTest {

    /** Differences 1, 2, 3, 4, 5: mean 3, standard error sqrt(2.5 / 5); quantile 2.7764 from the printed table. */
    @Test
    @Tag("published")
    void fiveDifferencesUseThePrintedQuantile() {
        PairedDifference difference = PairedDifference.of(new double[] {3, 3, 3, 3, 3}, new double[] {2, 1, 0, -1, -2})
                .orElseThrow();
        assertEquals(3, difference.mean(), 1e-15);
        // half of the last printed digit times the standard error
        assertEquals(2.7764 * Math.sqrt(0.5), difference.halfWidth(), 0.00005 * Math.sqrt(0.5));
        assertTrue(difference.correlation().isEmpty(), "one of them never varies");
    }

    /** Against Apache Commons Math, which computes both in another way. */
    @Test
    @Tag("published")
    void pValueAndCorrelationAreThoseOfALibrary() {
        for (int seed = 0; seed < 50; seed++) {
            Stream chance = new Stream(seed);
            double[] first = new double[12];
            double[] second = new double[12];
            for (int i = 0; i < first.length; i++) {
                first[i] = 10 * chance.uniform(i, 1);
                second[i] = first[i] * chance.uniform(i, 2) + 3 * chance.uniform(i, 3);
            }
            PairedDifference difference = PairedDifference.of(first, second).orElseThrow();
            // rounding alone
            assertEquals(new TTest().pairedTTest(first, second), difference.p(), 1e-12, "seed " + seed);
            assertEquals(
                    new PearsonsCorrelation().correlation(first, second),
                    difference.correlation().orElseThrow(),
                    1e-12,
                    "seed " + seed);
        }
    }

    @Test
    @Tag("derived")
    void noDifferenceAtAllIsCertainToBeNone() {
        double[] values = {0.1, 0.7, 0.3};
        PairedDifference difference =
                PairedDifference.of(values, values.clone()).orElseThrow();
        assertEquals(0, difference.mean());
        assertEquals(0, difference.halfWidth());
        assertEquals(1, difference.p());
        assertEquals(1, difference.correlation().orElseThrow(), 1e-15);
    }

    @Test
    @Tag("derived")
    void theSameDifferenceEveryTimeIsCertain() {
        // three times 0.1 does not add up to 0.3 in floating point
        PairedDifference difference = PairedDifference.of(new double[] {0.1, 0.1, 0.1}, new double[] {0, 0, 0})
                .orElseThrow();
        assertEquals(0.1, difference.mean());
        assertEquals(0, difference.halfWidth());
        assertEquals(0, difference.p());
    }

    @Test
    @Tag("derived")
    void repetitionsWithoutAValueAreLeftOutOfBoth() {
        PairedDifference difference = PairedDifference.of(
                        new double[] {1, Double.NaN, 3, 9}, new double[] {0, 5, 0, Double.NaN})
                .orElseThrow();
        assertEquals(2, difference.n());
        assertEquals(2, difference.mean());
    }

    @Test
    void fewerThanTwoPairsGiveNothing() {
        assertTrue(PairedDifference.of(new double[] {1}, new double[] {2}).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> PairedDifference.of(new double[] {1, 2}, new double[] {2}));
    }
}
