package limbway.model.weather;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Parton and Logan 1981: greatest 32, least 23.5, sunrise at 6.5 h, 12.12 h of sun, computed apart from the code. */
class DayCurveTest {

    private static final double SUNRISE_H = 6.5;
    private static final DayCurve CURVE = new DayCurve(23.5, 32, 23.5, 12.12, 11.88);

    @ParameterizedTest
    @Tag("derived")
    @CsvSource({"9, 27.7937", "12, 31.1676", "15, 31.9061", "18, 29.7555"})
    void followsThePublishedSineByDay(double clockH, double airC) {
        // the last printed digit
        assertEquals(airC, CURVE.airC(clockH - SUNRISE_H), 5e-5);
    }

    @ParameterizedTest
    @Tag("derived")
    @CsvSource({"21, 27.0411", "24, 25.5317", "30, 24.1688"})
    void thePublishedDecayIsTheOneThatIsStretched(double clockH, double airC) {
        double afterSunsetH = clockH - SUNRISE_H - 12.12;
        double published = 23.5 + (CURVE.airC(12.12) - 23.5) * CURVE.decay(afterSunsetH);
        // the last printed digit
        assertEquals(airC, published, 5e-5);
        // ours ends at the least temperature instead of 0.6 K above it, so it lies between the two
        double ours = CURVE.airC(clockH - SUNRISE_H);
        assertTrue(ours <= published && ours >= published - 0.64, ours + " against " + published);
    }

    @Test
    @Tag("derived")
    void aNightEndsWhereTheNextDayBegins() {
        DayCurve curve = new DayCurve(20, 30, 21, 13, 11);
        // both ends in closed form: only rounding
        assertEquals(21, curve.airC(24 + DayCurve.LEAST_AFTER_SUNRISE_H), 1e-9);
        assertEquals(20, curve.airC(DayCurve.LEAST_AFTER_SUNRISE_H), 1e-9);
        assertEquals(curve.airC(13), curve.airC(13 + 1e-9), 1e-7);
    }

    @Test
    @Tag("derived")
    void isWarmestAQuarterPastTwo() {
        // half the way through the sine: 6.5 - 0.17 + (12.12 + 2 x 1.86) / 2 = 14.25
        double warmestH = 14.25 - SUNRISE_H;
        assertEquals(32, CURVE.airC(warmestH), 1e-9);
        assertTrue(CURVE.airC(warmestH - 0.1) < 32 && CURVE.airC(warmestH + 0.1) < 32);
    }
}
