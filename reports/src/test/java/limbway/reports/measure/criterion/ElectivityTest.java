package limbway.reports.measure.criterion;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class ElectivityTest {

    private static final double[] USED = {60, 40, 80, 20};
    private static final double[] SIZE = {.4, .3, .2, .1};

    private static double electivity(double[] used, double[] size, int zone) {
        return Electivity.of(used, size, zone).orElseThrow();
    }

    /** r/p = 0.75, 0.667, 2, 1; W = 0.170, 0.151, 0.453, 0.226; the fourth is used by its size and still below 0. */
    @Test
    @Tag("derived")
    void workedExample() {
        double[] expected = {-.191, -.247, .289, -.050};
        for (int zone = 0; zone < 4; zone++) {
            assertEquals(expected[zone], electivity(USED, SIZE, zone), 6e-4);
        }
    }

    @Test
    @Tag("derived")
    void anUnusedZoneHasMinusOneAndTheOnlyUsedOneCannotReachOne() {
        assertEquals(-1, electivity(new double[] {5, 0, 0, 0}, SIZE, 2));
        assertEquals(0.6, electivity(new double[] {5, 0, 0, 0}, SIZE, 0), 1e-12);
        assertEquals(1.0 / 3, electivity(new double[] {0, 5}, new double[] {3, 1}, 1), 1e-12);
    }

    @Test
    void evenUseIsZeroForAll() {
        assertEquals(0, electivity(new double[] {4, 3, 2, 1}, SIZE, 3), 1e-12);
    }

    @Test
    void whereNothingCanBeSaidThereIsNoValue() {
        assertTrue(Electivity.of(new double[] {0, 0}, new double[] {1, 1}, 0).isEmpty());
        assertTrue(Electivity.of(new double[] {3, 0}, new double[] {1, 0}, 0).isEmpty());
        assertTrue(
                Electivity.of(new double[] {3, 2, 0}, new double[] {1, 1, 0}, 2).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> Electivity.of(new double[] {3, 1}, new double[] {1, 0}, 0));
    }
}
