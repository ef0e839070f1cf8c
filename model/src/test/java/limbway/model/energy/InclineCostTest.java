package limbway.model.energy;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class InclineCostTest {

    /**
     * The formula worked by hand with an independent script for three masses and six slopes, printed to one digit (level
     * to two); the table stands in docs/formulas.md.
     */
    @ParameterizedTest
    @Tag("derived")
    @CsvSource({
        "20, -90, 10.5, 0.05", "20, -24.2, 5.7, 0.05", "20, 0, 4.82, 0.005", "20, 15, 14.1, 0.05", "20, 45, 48.0, 0.05",
        "20, 90, 71.9, 0.05", "40, -90, 9.8, 0.05", "40, -24.2, 5.0, 0.05", "40, 0, 3.98, 0.005", "40, 15, 12.5, 0.05",
        "40, 45, 43.7, 0.05", "40, 90, 65.7, 0.05", "80, -90, 9.2, 0.05", "80, -24.2, 4.4, 0.05", "80, 0, 3.31, 0.005",
        "80, 15, 11.2, 0.05", "80, 45, 39.9, 0.05", "80, 90, 60.1, 0.05", "6, 0, 6.78, 0.005", "6, 90, 84.3, 0.05",
        "50, 0, 3.75, 0.005", "50, 90, 63.9, 0.05", "160, 0, 2.76, 0.005", "160, 90, 55.0, 0.05"
    })
    void costsAreThoseOfTheTable(double massKg, double slopeDeg, double jPerKgM, double halfLastDigit) {
        assertEquals(jPerKgM, InclineCost.jPerKgM(massKg, slopeDeg), halfLastDigit);
    }

    /** Measured: 5.0 J/(kg m), chimpanzees of 17.5 kg on the level, in the data table of Pontzer 2016. */
    @Test
    @Tag("published")
    void aChimpanzeeOnTheLevelSpendsWhatWasMeasured() {
        // one coefficient was raised to meet this value, so the test guards the calibration, it does not validate it
        assertEquals(5.0, InclineCost.jPerKgM(17.5, 0), 0.05);
    }

    @Test
    @Tag("derived")
    void bothBranchesMeetAtEightDegreesDown() {
        double above = InclineCost.jPerKgM(40, -8 + 1e-9);
        double below = InclineCost.jPerKgM(40, -8 - 1e-9);
        // slope of either branch is below 2 J/(kg m) a degree, times 2e-9 degrees
        assertEquals(above, below, 1e-8);
    }

    /** 1 m up is as dear as 14.9, 16.5 and 18.2 m on the level at 20, 40 and 80 kg: the ratio rises with mass. */
    @ParameterizedTest
    @Tag("derived")
    @CsvSource({"20, 14.9", "40, 16.5", "80, 18.2"})
    void climbingIsDearerForTheHeavy(double massKg, double ratio) {
        assertEquals(ratio, InclineCost.jPerKgM(massKg, 90) / InclineCost.jPerKgM(massKg, 0), 0.05);
    }

    /** Hanna, Schmitt and Griffin 2008: total cost of climbing, per kg and metre, loris and human climbers. */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({"61.2, 70.0, -0.12"})
    void missesHumanClimbersByAnEighth(double massKg, double measured, double miss) {
        // -12 % was stated for the uncorrected level coefficient; the raised one adds 0.4 of 62: still within a point
        assertEquals(miss, InclineCost.jPerKgM(massKg, 90) / measured - 1, 0.01);
    }

    /**
     * The published curve, with its own level coefficient of 8, against the climbing primates of Hanna, Schmitt and Griffin
     * 2008 in the data table of Pontzer 2016. The masses of the three small ones were not at hand: 0.17 kg (a slender loris),
     * 0.8 kg and 1.4 kg are from memory, and give the misses to a point.
     */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({"61.2, 70.0, -0.12", "0.17, 131.6, 0.03", "0.8, 104.6, 0.05", "1.4, 109.1, -0.07"})
    void thePublishedCurveMissesClimbersByAsMuchAsItDoes(double massKg, double measured, double miss) {
        double published = InclineCost.jPerKgM(massKg, 90) - (9.6 - 8) * StrictMath.pow(massKg, -0.34);
        // half the last printed digit, and as much again because the small masses are known to two digits at best
        assertEquals(miss, published / measured - 1, 0.01);
    }

    /** Measured 8.8 J/(kg m) on 15 degrees, chimpanzees of 17.5 kg, in the same table: the worst miss, 14.5, +64 %. */
    @Test
    @Tag("published")
    void missesTheChimpanzeeOnASlopeByTwoThirds() {
        assertEquals(14.5, InclineCost.jPerKgM(17.5, 15), 0.05);
        assertEquals(0.64, InclineCost.jPerKgM(17.5, 15) / 8.8 - 1, 0.005);
    }

    @Test
    void refusesASlopeBeyondTheVertical() {
        var thrown = assertThrows(IllegalArgumentException.class, () -> InclineCost.jPerKgM(40, 91));
        assertTrue(thrown.getMessage().contains("slopeDeg = 91.0, allowed -90 to 90"), thrown.getMessage());
    }
}
