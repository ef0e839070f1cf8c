package limbway.sim.experiment.statistics;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

class HolmTest {

    /** By hand: 4 × 0.005 = 0.02; 3 × 0.01 = 0.03; 2 × 0.03 = 0.06; 1 × 0.04 = 0.04, raised to the one before it. */
    @Test
    @Tag("derived")
    void fourValuesAreCorrectedAsByHand() {
        assertArrayEquals(new double[] {0.03, 0.06, 0.06, 0.02}, Holm.adjusted(0.01, 0.04, 0.03, 0.005), 1e-15);
    }

    @Test
    @Tag("derived")
    void nothingExceedsOneAndOneQuestionNeedsNoCorrection() {
        assertArrayEquals(new double[] {1, 1, 0}, Holm.adjusted(0.7, 0.9, 0));
        assertArrayEquals(new double[] {0.2}, Holm.adjusted(0.2));
        assertEquals(0, Holm.adjusted().length);
    }

    @Test
    void whatIsNoProbabilityIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Holm.adjusted(0.5, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Holm.adjusted(-0.1));
    }
}
