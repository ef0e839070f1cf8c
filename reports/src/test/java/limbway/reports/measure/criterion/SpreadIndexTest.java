package limbway.reports.measure.criterion;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class SpreadIndexTest {

    private static double spi(double[] used, double[] size) {
        return SpreadIndex.of(used, size).orElseThrow();
    }

    /** Σ|fo − fe| / (2 (N − least fe)) by hand: (35 + 0 + 15 + 20) / (2 · 75), and (10 + 5 + 5 + 0) / (2 · 95). */
    @Test
    @Tag("derived")
    void workedExamples() {
        assertEquals(0.46667, spi(new double[] {60, 25, 10, 5}, new double[] {25, 25, 25, 25}), 5e-6);
        assertEquals(0.10526, spi(new double[] {40, 35, 20, 5}, new double[] {50, 30, 15, 5}), 5e-6);
        // 20 + 20 + 40 + 0 over 2 (200 − 20)
        assertEquals(80.0 / 360, spi(new double[] {60, 40, 80, 20}, new double[] {.4, .3, .2, .1}), 1e-12);
    }

    @Test
    @Tag("derived")
    void evenUseIsZeroAndTheSmallestZoneAloneIsOne() {
        assertEquals(0, spi(new double[] {100, 100}, new double[] {1, 1}));
        assertEquals(1, spi(new double[] {0, 200}, new double[] {1, 1}));
        assertEquals(1, spi(new double[] {0, 0, 0, 9}, new double[] {.4, .3, .2, .1}), 1e-12);
    }

    /** The ground alone, four tenths of the room: (0.6 + 0.6) / (2 · 0.9). */
    @Test
    @Tag("derived")
    void aLargeZoneAloneDoesNotReachOne() {
        assertEquals(2.0 / 3, spi(new double[] {7, 0, 0, 0}, new double[] {.4, .3, .2, .1}), 1e-12);
    }

    @Test
    void neitherTheUnitOfUseNorThatOfSizeMatters() {
        double[] used = {6, 2.5, 1};
        double[] size = {5, 3, 2};
        assertEquals(spi(used, size), spi(new double[] {60, 25, 10}, new double[] {.5, .3, .2}), 1e-12);
    }

    /** Halves of the used zone: |fo − fe| adds up to the same, but the least expected falls from 0.5 to 0.25. */
    @Test
    @Tag("derived")
    void cuttingAZoneInTwoChangesTheIndex() {
        assertEquals(1, spi(new double[] {10, 0}, new double[] {2, 2}));
        assertEquals(2.0 / 3, spi(new double[] {5, 5, 0}, new double[] {1, 1, 2}), 1e-12);
    }

    @Test
    void aZoneWithoutSizeCountsForNothingAndMustNotBeUsed() {
        assertEquals(
                spi(new double[] {3, 1}, new double[] {1, 1}), spi(new double[] {3, 0, 1}, new double[] {1, 0, 1}));
        assertThrows(
                IllegalArgumentException.class, () -> SpreadIndex.of(new double[] {3, 1, 1}, new double[] {1, 0, 1}));
    }

    @Test
    void whereNothingCanBeSaidThereIsNoValue() {
        assertTrue(SpreadIndex.of(new double[] {0, 0}, new double[] {1, 1}).isEmpty());
        assertTrue(SpreadIndex.of(new double[] {3}, new double[] {1}).isEmpty());
        assertTrue(SpreadIndex.of(new double[] {3, 0}, new double[] {1, 0}).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> SpreadIndex.of(new double[] {-1, 2}, new double[] {1, 1}));
        assertThrows(IllegalArgumentException.class, () -> SpreadIndex.of(new double[] {1}, new double[] {1, 1}));
    }
}
