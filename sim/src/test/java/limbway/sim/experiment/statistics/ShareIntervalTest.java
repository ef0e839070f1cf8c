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
        // printed digits: half of the last, and a little for rounding
        double halfLastDigit = 5.1e-5;
        for (int i = 0; i < samples.length; i++) {
            ShareInterval score = ShareInterval.wilson(samples[i][0], samples[i][1]);
            assertEquals(wilson[i][0], score.lo(), halfLastDigit);
            assertEquals(wilson[i][1], score.hi(), halfLastDigit);
            assertEquals((double) samples[i][0] / samples[i][1], score.share(), 0);
        }
    }

    @Test
    @Tag("derived")
    void whatNeverFailedMayStillFail() {
        // at all n of n: n / (n + z^2), z = 1.959964
        assertEquals(200 / (200 + 3.841459), ShareInterval.wilson(200, 200).lo(), 1e-6);
        assertEquals(1, ShareInterval.wilson(200, 200).hi(), 1e-12);
    }

    @Test
    void impossibleCountsAreRefused() {
        assertEquals(
                "share: counted = 3, n = 2, allowed 0 to n, and n 1 or more",
                assertThrows(IllegalArgumentException.class, () -> ShareInterval.wilson(3, 2))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> ShareInterval.wilson(0, 0));
    }
}
