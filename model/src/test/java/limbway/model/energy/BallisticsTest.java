package limbway.model.energy;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

class BallisticsTest {

    private static final Body GIBBON =
            BodyCatalogue.standard().find("white-handed gibbon").orElseThrow();
    private static final double RIGID = Double.POSITIVE_INFINITY;

    /** v²/g, (v/g) sqrt(v² + 2 g 5) and v²/(2 g) at 8.3 m/s worked by an independent script: 7.025, 10.936, 3.512 m. */
    @Test
    @Tag("derived")
    void aTakeOffOfEightMetresASecondCarriesSevenMetres() {
        double speedMPerS = GIBBON.takeOffMPerS();
        assertEquals(7.025, Ballistics.levelRangeM(speedMPerS), 5e-4);
        assertEquals(10.936, Ballistics.widestGapM(speedMPerS, -5), 5e-4);
        assertEquals(3.512, Ballistics.highestRiseM(speedMPerS), 5e-4);
        assertEquals(0, Ballistics.widestGapM(speedMPerS, 3.6));
    }

    /**
     * Channon et al. 2011, doi 10.1098/rsbl.2011.0574 (abstract): gaps of more than 10 m, take-off 8.3 m/s. The level range
     * is 7.0 m only, so such a gap needs a landing 3.6 m lower: found values that agree only for a drop.
     */
    @Test
    @Tag("published")
    void aGapOfTenMetresNeedsADropOfThreeAndAHalf() {
        double dropM = Ballistics.dropForGapM(8.3, 10);
        // half of the last digit of the closed form worked by an independent script, 3.605
        assertEquals(3.605, dropM, 5e-4);
        // inverse of each other but for rounding
        assertEquals(10, Ballistics.widestGapM(8.3, -dropM), 1e-12);
        assertEquals(8.3, Ballistics.leastSpeedMPerS(10, -dropM), 1e-12);
    }

    /**
     * The same paper prints 35.4 J/kg at take-off; M v²/2 alone is 34.4 J/kg at 8.3 m/s, 3 % less. 8.3 is rounded to two
     * digits, which explains up to 0.4 J/kg; the rest is not explained.
     */
    @Test
    @Tag("published")
    void theEnergyOfTakeOffIsThreePerCentBelowThatMeasured() {
        // the miss is a fact to be noticed if it changes: -2.7 %, held to half a per cent
        assertEquals(-0.027, LeapCost.kineticJ(1, 8.3) / 35.4 - 1, 0.005);
    }

    /** Cannon and Leighton 1994 (abstract): widest gap crossed 9 m by gibbons, 3.5 m by macaques. */
    @Test
    @Tag("published")
    void theWidestGapSeenIsLeapedWithADropOfTwoAndAQuarter() {
        var leap = new LeapCost(LeapSettings.GROUP.standard());
        assertInstanceOf(Crossing.Refused.class, leap.across(GIBBON, 9, 0, RIGID));
        // the closed form gives 2.253 m
        assertInstanceOf(Crossing.Refused.class, leap.across(GIBBON, 9, -2.25, RIGID));
        assertInstanceOf(Crossing.Possible.class, leap.across(GIBBON, 9, -2.26, RIGID));
        assertEquals(
                new Crossing.Refused("the gap is 9.1 m, allowed up to 9.0 m"), leap.across(GIBBON, 9.1, -5, RIGID));
        // a macaque's level leap of 3.5 m asks for sqrt(3.5 g) = 5.859 m/s, below the gibbon's
        assertEquals(5.859, Ballistics.leastSpeedMPerS(3.5, 0), 5e-4);
    }

    /** v² = g d² / [2 cos²45 (d - h)]: over 1.5 m level sqrt(14.709975) = 3.8354 m/s, the least speed of any angle. */
    @ParameterizedTest
    @Tag("derived")
    @CsvSource({"1.5, 0, 3.8354", "1.8, 0, 4.2014", "2, 1, 6.2631", "2, -1, 3.6160"})
    void theSpeedAtFortyFiveDegreesIsThatOfTheClosedForm(double gapM, double riseM, double speedMPerS) {
        assertEquals(speedMPerS, Ballistics.speedAtAngleMPerS(gapM, riseM, 45), 5e-5);
        // equal on the level but for rounding
        assertTrue(Ballistics.leastSpeedMPerS(gapM, riseM) <= speedMPerS + 5e-5);
    }

    @Test
    @Tag("derived")
    void noSpeedReachesALandingAboveTheLineOfTakeOff() {
        assertEquals(Double.POSITIVE_INFINITY, Ballistics.speedAtAngleMPerS(1, 1.1, 45));
    }

    /** A search over ten thousand angles finds no slower flight than the closed form, and one as slow. */
    @ParameterizedTest
    @Tag("derived")
    @CsvSource({"2, 0", "2, 1", "3, -2", "10, -3.6"})
    void theLeastSpeedIsTheLeastOverAllAngles(double gapM, double riseM) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = -8999; i < 9000; i++) {
            least = Math.min(least, Ballistics.speedAtAngleMPerS(gapM, riseM, i / 100.0));
        }
        double closed = Ballistics.leastSpeedMPerS(gapM, riseM);
        assertTrue(closed <= least + 1e-12);
        // at the least the speed changes with the square of the angle: (0.01 degrees)² is 3e-8
        assertEquals(1, least / closed, 1e-7);
    }
}
