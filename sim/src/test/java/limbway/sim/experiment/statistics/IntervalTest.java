package limbway.sim.experiment.statistics;

import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class IntervalTest {

    /** Quantiles 2.776 (4 degrees of freedom) and 12.706 (1): the table of Student's t printed in every textbook. */
    @Test
    @Tag("published")
    void fiveValuesUseThePrintedQuantile() {
        Interval interval = Interval.of(List.of(1.0, 2.0, 3.0, 4.0, 5.0)).orElseThrow();
        // mean 3; squares 4+1+0+1+4 = 10; variance 10/4 = 2.5; standard error sqrt(2.5/5) = 0.70711
        double expected = 2.776 * Math.sqrt(0.5);
        // the quantile is printed to three decimals: half of the last, times the standard error
        double halfLastDigit = 0.0005 * Math.sqrt(0.5);
        assertEquals(3, interval.mean(), 1e-15);
        assertEquals(expected, interval.halfWidth().orElseThrow(), halfLastDigit);
        assertEquals(5, interval.n());
    }

    @Test
    @Tag("published")
    void twoValuesUseThePrintedQuantile() {
        Interval interval = Interval.of(List.of(0.0, 2.0)).orElseThrow();
        // standard error sqrt(2/2) = 1
        assertEquals(12.706, interval.halfWidth().orElseThrow(), 0.0005);
        assertEquals(1 - 12.706, interval.lo().orElseThrow(), 0.0005);
        assertEquals(1 + 12.706, interval.hi().orElseThrow(), 0.0005);
    }

    @Test
    @Tag("derived")
    void oneValueHasNoInterval() {
        Interval interval = Interval.of(List.of(0.25)).orElseThrow();
        assertEquals(0.25, interval.mean());
        assertTrue(interval.lo().isEmpty());
        assertTrue(interval.hi().isEmpty());
    }

    @Test
    @Tag("derived")
    void equalValuesHaveAnIntervalWithoutWidth() {
        assertEquals(
                0, Interval.of(List.of(0.5, 0.5, 0.5)).orElseThrow().halfWidth().orElseThrow());
    }

    @Test
    @Tag("derived")
    void noValuesHaveNoMean() {
        assertTrue(Interval.of(List.of()).isEmpty());
    }
}
