package limbway.sim.animal;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.sim.habitat.Warmth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

class HeatCurveTest {

    private static final long STEP_MS = 15 * 60_000;
    private static final long MIN = 60_000;

    /** Two places for an hour: the first in the sun in the second half hour, the other in shade all the time. */
    private static final Warmth HOUR =
            new Warmth(2, STEP_MS, new float[] {29.5f, 29.5f, 50, 50, 29.5f, 29.5f, 29.5f, 29.5f});

    private static HeatCurve curve() {
        return new HeatCurve(HOUR, HeatNeedSettings.GROUP.standard());
    }

    @Test
    @Tag("derived")
    void inOneResponseTimeItComesSixtyThreePercentOfTheWay() {
        // from 30 min on the place gives the greatest trouble; the response time is 20 min, so 1 - 1/e after it
        double after = curve().after(0, 0, 30 * MIN, 50 * MIN);
        // two steps of the exponential multiply to the whole: rounding of doubles only
        assertEquals(1 - Math.exp(-1), after, 1e-12);
    }

    @Test
    void timePassesAlikeInOnePieceAndInMany() {
        double whole = curve().after(0.7, 0, 0, 60 * MIN);
        double heat = 0.7;
        for (long ms = 0; ms < 60 * MIN; ms += 7 * MIN) {
            heat = curve().after(heat, 0, ms, Math.min(60 * MIN, ms + 7 * MIN));
        }
        // nine exponentials in place of four
        assertEquals(whole, heat, 1e-12);
    }

    @Test
    void tellsWhenTroubleRisesToALevel() {
        long at = curve().reachesMs(0, 0, 0, 60 * MIN, 0.5);
        // after 30 min in shade, 20 min * ln 2 in the sun
        assertEquals((30 + 20 * Math.log(2)) * 60_000.0, (double) at, 1.0);
        assertTrue(curve().after(0, 0, 0, at) >= 0.5 - 1e-12);
        assertTrue(curve().after(0, 0, 0, at - 1) < 0.5);
        assertEquals(60 * MIN, curve().reachesMs(0, 1, 0, 60 * MIN, 0.5));
        assertEquals(40 * MIN, curve().reachesMs(0, 0, 0, 40 * MIN, 0.5));
    }

    @Test
    void shadeIsWorthMoreTheHotterOneIs() {
        double cool = curve().gain(0.2, 1, 0, 60 * MIN);
        double hot = curve().gain(0.8, 1, 0, 60 * MIN);
        assertTrue(hot > cool && cool > 0);
        assertTrue(curve().gain(0.2, 0, 0, 60 * MIN) < 0, "a place that will lie in the sun");
    }

    @Test
    void nothingCountsWithoutWeatherOrWithoutWeight() {
        assertFalse(new HeatCurve(Warmth.UNKNOWN, HeatNeedSettings.GROUP.standard()).counts());
        HeatNeedSettings off = new HeatNeedSettings(29.5, 50, 20, 0);
        assertEquals(0, new HeatCurve(HOUR, off).gain(0.8, 1, 0, 60 * MIN));
    }
}
