package limbway.model.heat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.light.Irradiance;
import limbway.model.weather.Conditions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class OperativeTemperatureTest {

    private static final double GLOBAL = 900 * Math.sin(Math.toRadians(70)) + 120;
    private static final Conditions NOON = new Conditions(32, 0.5, new Irradiance(900, 120, GLOBAL));
    private static final OperativeTemperature APE = new OperativeTemperature(HeatSettings.standard());

    /**
     * Campbell and Norman 1998 as the tests of a public library for thermal ecology give it: air and ground 30 °C, 823 W/m2,
     * absorptance 0.7, emittance 0.96, size 0.17 m, wind 1 m/s: 59.54376.
     */
    @Test
    @Tag("published")
    void matchesAPublicLibrary() {
        OperativeTemperature lizard = new OperativeTemperature(new HeatSettings(0.2, 0, 0.7, 0.96, 0.17, 0.1));
        double absorbed = 0.7 * 823 + 0.96 * Thermal.blackBodyWPerM2(30);
        // theirs takes Stefan's constant as 5.673e-8: 0.05 % of the cooling by rays, a third of 29.5 K
        assertEquals(59.54376, lizard.ofBodyC(30, 1, absorbed), 0.005);
    }

    /** An ape in the open, computed apart from the code: air 32 °C, ground 45 °C, wind 0.5 m/s. */
    @Test
    @Tag("derived")
    void inTheSunItIsAsAnIndependentRunSays() {
        // the last printed digit
        assertEquals(55.884, APE.ofPlaceC(NOON, 1, 1, GLOBAL, 45), 5e-4);
    }

    /** The same in shade with the whole sky above it for heat rays: 66.236 W/m2 of light, ground 33 °C. */
    @Test
    @Tag("derived")
    void inTheShadeItIsAsAnIndependentRunSays() {
        double light = 0.25 * 900 * 0.15 + 0.5 * 120 * 0.3 + 0.1 * GLOBAL * 0.15;
        assertEquals(66.236, light, 5e-4);
        double rays = 0.97 * (Thermal.blackBodyWPerM2(SkyTemperature.swinbankC(32)) + Thermal.blackBodyWPerM2(33)) / 2;
        // the last printed digit
        assertEquals(33.649, APE.ofBodyC(32, 0.5, 0.75 * light + rays), 5e-4);
    }

    /** A roof is as warm as the air and so warmer than the sky: the same place under it, worked by hand. */
    @Test
    @Tag("derived")
    void aRoofSendsMoreHeatThanTheSky() {
        double open = APE.ofPlaceC(NOON, 0.15, 1, 0.15 * GLOBAL, 33);
        double light = 0.25 * 900 * 0.15 + 0.5 * 120 * 0.3 + 0.1 * GLOBAL * 0.15;
        double above = 0.3 * Thermal.blackBodyWPerM2(SkyTemperature.swinbankC(32)) + 0.7 * Thermal.blackBodyWPerM2(32);
        double expected = APE.ofBodyC(32, 0.5, 0.75 * light + 0.97 * (above + Thermal.blackBodyWPerM2(33)) / 2);
        // the same sum in another order
        assertEquals(expected, APE.ofPlaceC(NOON, 0.15, 0.3, 0.15 * GLOBAL, 33), 1e-9);
        // 0.7 of half the difference of sky and air (69 W/m2), less 0.75 x 42 W/m2 of sky light: 0.7 K more or less
        assertEquals(open, APE.ofPlaceC(NOON, 0.15, 0.3, 0.15 * GLOBAL, 33), 1.5);
    }

    @Test
    @Tag("derived")
    void theGroundIsLitAsThePlaceIs() {
        // 0.01035 K for each W/m2: 42.0 °C under the open sun; then both ways are the same sum
        double groundC = 32 + 0.01035 * GLOBAL;
        assertEquals(APE.ofPlaceC(NOON, 1, 1, GLOBAL, groundC), APE.ofPlaceC(NOON, 1, 1, 70), 1e-9);
    }

    @Test
    @Tag("derived")
    void shadeAndWindCool() {
        double before = Double.NEGATIVE_INFINITY;
        for (int tenth = 0; tenth <= 10; tenth++) {
            double here = APE.ofPlaceC(NOON, tenth / 10.0, 0.5, 70);
            assertTrue(here > before);
            before = here;
        }
        Conditions windy = new Conditions(32, 3, NOON.irradiance());
        assertTrue(APE.ofPlaceC(windy, 1, 1, 70) < APE.ofPlaceC(NOON, 1, 1, 70));
    }

    @Test
    @Tag("derived")
    void stillAirCountsAsTheLeastWind() {
        Conditions still = new Conditions(32, 0, NOON.irradiance());
        assertEquals(APE.ofPlaceC(NOON, 1, 1, 70), APE.ofPlaceC(still, 1, 1, 70));
    }

    @Test
    @Tag("derived")
    void atNightTheOpenIsColderThanTheRoof() {
        Conditions night = new Conditions(20, 0, Irradiance.NIGHT);
        assertTrue(APE.ofPlaceC(night, 0, 1, -30) < APE.ofPlaceC(night, 0, 0, -30));
        // roof and ground as warm as the air, no light: exactly the air
        assertEquals(20, APE.ofPlaceC(night, 0, 0, -30), 1e-9);
    }
}
