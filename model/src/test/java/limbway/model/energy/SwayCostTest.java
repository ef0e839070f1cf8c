package limbway.model.energy;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

@Tag("derived")
class SwayCostTest {

    private final SwayCost cost = new SwayCost(SwaySettings.GROUP.standard());

    /** Amplitude n/N in the n-th of N swings, each losing 4 pi zeta of its energy, added one by one. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 8, 40})
    void theLossFactorIsTheSumOverTheSwings(int cycles) {
        double factor = 1;
        for (int n = 1; n <= cycles; n++) {
            factor += 4 * Math.PI * 0.05 * n * n / ((double) cycles * cycles);
        }
        // at most forty additions of numbers near one
        assertEquals(factor, SwayCost.lossFactor(cycles, 0.05), 1e-13);
    }

    /** 40 kg and a pole of 20 kg on 150 N/m: 2 pi sqrt(44.8 / 150) = 3.4338 s; without the pole's mass 3.2446 s. */
    @Test
    void thePeriodCountsAQuarterOfThePole() {
        assertEquals(3.4338, SwayCost.periodS(150, 40, 20), 5e-5);
        assertEquals(3.2446, SwayCost.periodS(150, 40, 0), 5e-5);
    }

    @Test
    void threeSwingsTakeThreePeriods() {
        var possible = assertInstanceOf(Crossing.Possible.class, cost.across(40, 1.5, 3.0, 150, 7, 20));
        assertEquals(3 * 3.4338, possible.seconds(), 2e-4);
        // 150 1.5² / 2 1.97738 / 0.25, the factor to six digits
        assertEquals(1334.73, possible.energyJ(), 0.005);
    }

    /** k - 1.2 M g / H: 150 - 1.2 40 9.80665 / 7 = 82.754; on a pole of 3 m it would be negative: a quarter of k. */
    @Test
    void bodyWeightSoftensThePoleOnlyWhereAsked() {
        assertEquals(82.754, SwayCost.softenedNPerM(150, 40, 7), 5e-4);
        assertEquals(37.5, SwayCost.softenedNPerM(150, 40, 3));
        var hard = (Crossing.Possible) cost.across(40, 1.5, 3.0, 150, 7, 20);
        var soft = (Crossing.Possible)
                new SwayCost(new SwaySettings(3, 0.05, 0.25, 0.3, true)).across(40, 1.5, 3.0, 150, 7, 20);
        // energy goes with the stiffness
        assertEquals(82.754 / 150, soft.energyJ() / hard.energyJ(), 5e-6);
        assertTrue(soft.seconds() > hard.seconds());
    }

    @Test
    void refusesASwingBeyondThreeTenthsOfThePole() {
        assertInstanceOf(Crossing.Possible.class, cost.across(40, 1.5, 3.0, 150, 5.01, 20));
        assertEquals(
                new Crossing.Refused("the pole would have to swing 1.5 m, allowed up to 1.2 m, 0.3 of its length"),
                cost.across(40, 1.5, 3.0, 150, 4, 20));
    }

    @Test
    void refusesAGapWithinReach() {
        assertEquals(
                new Crossing.Refused("the gap of 1.5 m is within the reach of 1.5 m"),
                cost.across(40, 1.5, 1.5, 150, 7, 20));
    }

    @Test
    void aPoleBringsItsOwnStiffnessLengthAndMass() {
        var pole = new FlexiblePole(7, 0.08, 0.05, new Elasticity(8e9, 900, 0));
        assertEquals(
                cost.across(40, 1.5, 2.5, pole.stiffnessNPerM(), 7, pole.massKg()), cost.across(40, 1.5, 2.5, pole));
    }
}
