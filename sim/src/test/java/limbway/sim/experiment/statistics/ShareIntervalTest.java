package limbway.sim.experiment.statistics;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

class ShareIntervalTest {

    /** Newcombe 1998, Stat. Med. 17:857-872, table I (from memory): four samples, printed to four decimals. */
    @Test
    @Tag("published")
    void intervalsAreThoseOfThePublishedSamples() {
        int[][] samples = {{81, 263}, {15, 148}, {0, 20}, {1, 29}};
        double[][] wilson = {{0.2553, 0.3662}, {0.0624, 0.1605}, {0, 0.1611}, {0.0061, 0.1718}};
        double[][] exact = {{0.2527, 0.3676}, {0.0578, 0.1617}, {0, 0.1684}, {0.0009, 0.1776}};
        // printed digits: half of the last, and a little for the iteration of the beta quantile
        double halfLastDigit = 5.1e-5;
        for (int i = 0; i < samples.length; i++) {
            ShareInterval score = ShareInterval.wilson(samples[i][0], samples[i][1]);
            ShareInterval sure = ShareInterval.exact(samples[i][0], samples[i][1]);
            assertEquals(wilson[i][0], score.lo(), halfLastDigit);
            assertEquals(wilson[i][1], score.hi(), halfLastDigit);
            assertEquals(exact[i][0], sure.lo(), halfLastDigit);
            assertEquals(exact[i][1], sure.hi(), halfLastDigit);
            assertEquals((double) samples[i][0] / samples[i][1], score.share(), 0);
        }
    }

    @Test
    @Tag("derived")
    void whatNeverFailedMayStillFail() {
        // exact: the lower end p solves p^n = 0.025; Wilson at all n of n: n / (n + z^2), z = 1.959964
        assertEquals(
                StrictMath.pow(0.025, 1.0 / 200), ShareInterval.exact(200, 200).lo(), 1e-8);
        assertEquals(200 / (200 + 3.841459), ShareInterval.wilson(200, 200).lo(), 1e-6);
        assertEquals(1, ShareInterval.wilson(200, 200).hi(), 1e-12);
        assertEquals(1, ShareInterval.exact(200, 200).hi(), 0);
    }

    @Test
    void impossibleCountsAreRefused() {
        assertEquals(
                "share: counted = 3, n = 2, allowed 0 to n, and n 1 or more",
                assertThrows(IllegalArgumentException.class, () -> ShareInterval.wilson(3, 2))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> ShareInterval.exact(0, 0));
    }
}
