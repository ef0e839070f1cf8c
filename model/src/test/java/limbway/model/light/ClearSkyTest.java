package limbway.model.light;

import java.time.Instant;
import java.time.ZoneOffset;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import limbway.model.enclosure.Site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class ClearSkyTest {

    private static final ClearSky TEMPERATE = new ClearSky(3);

    /** Ineichen and Perez 2002 as the tests of the public library pvlib give it: zenith 10, air mass 1, 1364 W/m2, sea. */
    @Test
    @Tag("published")
    void matchesTheTestOfAPublicLibrary() {
        Irradiance light = TEMPERATE.throughAir(Math.cos(Math.toRadians(10)), 1, 0, 1364);
        // the same formula, printed to six decimals
        assertEquals(1038.159219, light.globalWPerM2(), 5e-7);
        assertEquals(942.208186, light.beamWPerM2(), 5e-7);
        assertEquals(110.265293, light.diffuseWPerM2(), 5e-7);
    }

    /** Kasten and Young 1989, computed apart from the code to five decimals. */
    @ParameterizedTest
    @Tag("derived")
    @CsvSource({"90, 0.99971", "30, 1.99429", "10, 5.58604", "0, 37.91961"})
    void passesAsMuchAirAsKastenAndYoungSay(double altitudeDeg, double airMass) {
        assertEquals(airMass, ClearSky.airMass(altitudeDeg), 5e-6);
    }

    /** Spencer 1971, computed apart from the code. */
    @ParameterizedTest
    @Tag("derived")
    @CsvSource({"1, 1.03505, 5e-6", "80, 1.0079001, 5e-8", "172, 0.9674428, 5e-8", "355, 1.0341180, 5e-8"})
    void theSunIsNearestInJanuary(int day, double factor, double lastDigit) {
        assertEquals(factor, ClearSky.distanceFactor(day), lastDigit);
    }

    /**
     * Haurwitz 1945, 1098 sin(a) exp(-0.059 / sin(a)), values of pvlib's tests: a model with no haze to set and no height of
     * the place, fitted apart from ours.
     */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({"10, 135.74175, 0.25", "30, 487.89413, 0.1", "50, 778.76669, 0.1", "90, 1035.09203, 0.1"})
    void agreesWithAModelFittedElsewhere(double altitudeDeg, double globalWPerM2, double share) {
        // day 94 lies at the mean distance; Linke 3 is our choice for temperate air. Models of this kind differ by a
        // tenth;
        // with the sun at 10 degrees ours gives a fifth less, where there is little light in any case
        double ours = TEMPERATE.of(new SunPosition(180, altitudeDeg), 94, 0).globalWPerM2();
        assertEquals(globalWPerM2, ours, share * globalWPerM2);
    }

    /**
     * Bird and Hulstrom 1981, the sheet of NREL: 40 N 105 W, 840 hPa (about 1,550 m), 1.5 cm of water, optical depth 0.1 at
     * 500 nm and 0.15 at 380 nm, zenith 63.52, 1 January: beam 805.171, global 450.216. By the rule of Kasten 1996 (from
     * memory) this is Linke 2.9: (9.4 + 0.9 m)(-0.101 + 0.235 m^-0.16 + 0.112 m^-0.55 w^0.34 + a), m 1.85, a 0.06.
     */
    @Test
    @Tag("published")
    void givesUpToATenthMoreBeamThanASpectralModel() {
        Irradiance light = new ClearSky(2.9).of(new SunPosition(180, 90 - 63.52421726), 1, 1550);
        // models and the translation of haze differ by a tenth; ours lies on the bright side, as a worst case may
        assertEquals(805.171, light.beamWPerM2(), 0.11 * 805);
        assertEquals(450.216, light.globalWPerM2(), 0.04 * 450);
        assertTrue(light.beamWPerM2() > 805.171);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.5, 2, 5, 20, 45, 90})
    @Tag("derived")
    void globalIsDiffusePlusTheLevelPartOfTheBeam(double altitudeDeg) {
        for (double haze : new double[] {1, 3, 5, 10}) {
            for (double elevationM : new double[] {-500, 0, 2000, 4500}) {
                Irradiance light = new ClearSky(haze).of(new SunPosition(90, altitudeDeg), 100, elevationM);
                double level = light.beamWPerM2() * Math.sin(Math.toRadians(altitudeDeg));
                // by definition; only rounding
                assertEquals(light.globalWPerM2(), light.diffuseWPerM2() + level, 1e-9);
                assertTrue(light.beamWPerM2() < ClearSky.SOLAR_CONSTANT_W_PER_M2, "no more than above the air");
            }
        }
    }

    @Test
    @Tag("derived")
    void hazeTakesBeamAndGivesDiffuseLight() {
        SunPosition sun = new SunPosition(180, 50);
        Irradiance clear = new ClearSky(2).of(sun, 172, 0);
        Irradiance hazy = new ClearSky(5).of(sun, 172, 0);
        assertTrue(hazy.beamWPerM2() < clear.beamWPerM2());
        assertTrue(hazy.diffuseWPerM2() > clear.diffuseWPerM2());
        assertTrue(hazy.globalWPerM2() < clear.globalWPerM2());
    }

    @Test
    void isDarkWhileTheSunIsDown() {
        Site site = new Site(48, 11, ZoneOffset.ofHours(1));
        assertSame(Irradiance.NIGHT, TEMPERATE.at(site, Instant.parse("2026-06-21T23:00:00Z")));
        assertTrue(TEMPERATE.at(site, Instant.parse("2026-06-21T11:00:00Z")).globalWPerM2() > 800);
    }

    @Test
    void refusesAHazeThatNoSkyHas() {
        var refused = assertThrows(IllegalArgumentException.class, () -> new ClearSky(0.5));
        assertEquals("clear sky: linkeTurbidity = 0.5, allowed 1 to 10", refused.getMessage());
    }
}
