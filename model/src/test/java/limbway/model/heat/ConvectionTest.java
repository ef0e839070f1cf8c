package limbway.model.heat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.junit.jupiter.api.Assertions.assertEquals;

class ConvectionTest {

    /** Churchill and Bernstein as the tests of the public library ht give it, which notes that Incropera agrees. */
    @Test
    @Tag("published")
    void windAcrossABarMatchesAPublicLibrary() {
        // printed to eight decimals
        assertEquals(40.63708594, Convection.churchillBernstein(6071, 0.7), 5e-9);
    }

    /** Churchill and Chu as the documentation of ht gives it, after Incropera's example 9.2. */
    @Test
    @Tag("published")
    void risingAirMatchesAPublicLibrary() {
        // printed to eight decimals; five are kept here
        assertEquals(139.13494, Convection.churchillChu(0.69 * 2.63e9, 0.69), 5e-6);
    }

    /** Incropera, bar of 12.7 mm at 128.4 °C in 10 m/s of air at 26.2 °C: 102 W/m2K were measured, 96.0 by the formula. */
    @Test
    @Tag("published")
    void comesNearAMeasuredBar() {
        double found = Convection.coefficientWPerM2K(0.0127, 128.4, 26.2, 10);
        // the textbook takes its properties of air from a table at 300 K
        assertEquals(96.0, found, 0.03 * 96);
        // the authors of the formula claim no better than 20 %
        assertEquals(102.0, found, 0.1 * 102);
    }

    /** Cengel, from memory: pipe of 10 cm at 110 °C, air at 10 °C, 8 m/s: 34.95 W/m2K, 1,093 W/m. */
    @Test
    @Tag("published")
    void matchesATextbookPipeInTheWind() {
        double found = Convection.coefficientWPerM2K(0.1, 110, 10, 8);
        // the book reads air from a table and rounds the Nusselt number to 124
        assertEquals(34.95, found, 0.015 * 34.95);
        assertEquals(1093, found * Math.PI * 0.1 * 100, 0.015 * 1093);
    }

    /** Incropera 9.4, from memory: pipe of 10 cm at 165 °C in still air at 23 °C, emittance 0.85: 763.4 W/m. */
    @Test
    @Tag("published")
    void matchesATextbookPipeInStillAir() {
        double byAir = Convection.coefficientWPerM2K(0.1, 165, 23, 0) * Math.PI * 0.1 * 142;
        double byRays = 0.85 * Math.PI * 0.1 * (Thermal.blackBodyWPerM2(165) - Thermal.blackBodyWPerM2(23));
        // properties of air from a table against formulas; rays differ by the book's 273 for 273.15
        assertEquals(322.4, byAir, 0.01 * 322);
        assertEquals(441.0, byRays, 0.003 * 441);
        assertEquals(766, byAir + byRays, 0.012 * 766);
    }

    /** Morgan 1975, by ht's documentation: an independent fit to measured bars, against the correlation that we use. */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({"1e3, 0.17", "1e4, 0.12", "1e5, 0.12", "1e6, 0.12", "7.2e6, 0.12"})
    void risingAirAgreesWithAnIndependentFit(double rayleigh, double share) {
        assertEquals(24.86419, morgan(7.2e6), 5e-6);
        assertEquals(151.38820, morgan(1.8147e9), 5e-6);
        // fits of natural convection round bars lie within 12 % of each other; of rods under 1 cm ours cools 17 % less
        assertEquals(morgan(rayleigh), Convection.churchillChu(rayleigh, 0.71), share * morgan(rayleigh));
    }

    private static double morgan(double rayleigh) {
        if (rayleigh < 1e2) {
            return 1.02 * Math.pow(rayleigh, 0.148);
        }
        if (rayleigh < 1e4) {
            return 0.85 * Math.pow(rayleigh, 0.188);
        }
        return rayleigh < 1e7 ? 0.48 * Math.pow(rayleigh, 0.25) : 0.125 * Math.pow(rayleigh, 0.333);
    }

    /** How cooling falls with thickness, computed apart from the code: thin stays cool in wind, hardly in still air. */
    @ParameterizedTest
    @Tag("derived")
    @CsvSource({"0, -0.21", "0.5, -0.49", "1, -0.48", "2, -0.47", "5, -0.44"})
    void coolingFallsWithThicknessMuchFasterInWind(double windMPerS, double exponent) {
        double thin = Convection.coefficientWPerM2K(0.02, 60, 35, windMPerS);
        double thick = Convection.coefficientWPerM2K(0.1, 60, 35, windMPerS);
        double found = Math.log(thick / thin) / Math.log(5);
        // two printed digits, and up to a hundredth by the temperature at which it is taken
        assertEquals(exponent, found, 0.015);
    }

    @Test
    @Tag("derived")
    void theStrongerOfWindAndRisingAirCools() {
        double still = Convection.coefficientWPerM2K(0.05, 70, 35, 0);
        // a breath of wind is weaker than the rising air, so it changes nothing
        assertEquals(still, Convection.coefficientWPerM2K(0.05, 70, 35, 0.05));
        double warmBelowAir = Convection.coefficientWPerM2K(0.05, 25, 35, 0);
        // air sinks along a cold bar as it rises along a warm one; only the temperature of the film differs
        assertEquals(Convection.coefficientWPerM2K(0.05, 45, 35, 0), warmBelowAir, 0.05 * warmBelowAir);
    }

    /** Printed formulas of IEEE 738 for air at the height of the sea, from memory, at 70 °C. */
    @Test
    @Tag("published")
    void airIsAsInTheStandardForOverheadLines() {
        AirProperties air = AirProperties.at(70);
        double kelvin = 343;
        // fits of the same tables: within 1 %
        assertEquals(1.458e-6 * Math.pow(kelvin, 1.5) / (70 + 383.4), air.viscosityPaS(), 0.01 * 2.05e-5);
        assertEquals(1.293 / (1 + 0.00367 * 70), air.densityKgPerM3(), 0.01 * 1.03);
        assertEquals(2.424e-2 + 7.477e-5 * 70 - 4.407e-9 * 70 * 70, air.conductivityWPerMK(), 0.01 * 0.0295);
    }
}
