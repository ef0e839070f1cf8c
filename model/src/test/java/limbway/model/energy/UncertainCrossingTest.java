package limbway.model.energy;

import java.util.SplittableRandom;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/**
 * The gap of {@link ReferenceCaseTest} with every uncertain number drawn evenly from its range, 20 000 times: mass 30 to
 * 80 kg, stiffness 50 to 300 N/m, gap 1 to 2 m, 2 to 5 swings, damping 0.02 to 0.10, push-off 0.4 to 0.8 m, efficiency of
 * swaying 0.20 to 0.25 and of jumping 0.12 to 0.25, climbing 40 to 75 J/(kg m), height 4 to 12 m, walk 1 to 5 m.
 *
 * <p>Expected shares are those of a script with another generator and the same number of draws.
 */
@Tag("derived")
class UncertainCrossingTest {

    private static final int DRAWS = 20_000;
    private static final long SEED = 7;

    private final double[] swayOverJump = new double[DRAWS];
    private final double[] swayOverDetour = new double[DRAWS];

    UncertainCrossingTest() {
        var chance = new SplittableRandom(SEED);
        for (int i = 0; i < DRAWS; i++) {
            double massKg = chance.nextDouble(30, 80);
            double stiffnessNPerM = chance.nextDouble(50, 300);
            double gapM = chance.nextDouble(1, 2);
            int cycles = chance.nextInt(2, 6);
            double damping = chance.nextDouble(0.02, 0.10);
            double swayJ = SwayCost.energyJ(stiffnessNPerM, gapM, cycles, damping, chance.nextDouble(0.20, 0.25));
            var jump = new Jump(massKg, gapM, stiffnessNPerM, chance.nextDouble(0.4, 0.8));
            swayOverJump[i] = swayJ / jump.energyJ(chance.nextDouble(0.12, 0.25));
            double climb = chance.nextDouble(40, 75);
            double heightM = chance.nextDouble(4, 12);
            swayOverDetour[i] = swayJ / Detour.costJ(massKg, heightM, chance.nextDouble(1, 5), heightM, climb);
        }
    }

    @Test
    void swayingIsUsuallyLessThanHalfOfAJump() {
        assertMedian(0.18, 0.005, swayOverJump);
        assertShare(0.85, 0.005, below(0.5, swayOverJump));
    }

    /** By design: on a stiff pole a light animal does better to jump. */
    @Test
    void swayingIsNotAlwaysCheaperThanAJump() {
        // the script's quantiles at 5 and 95 %: 0.02 and 0.83
        assertShare(0.05, 0.01, below(0.0234, swayOverJump));
        assertShare(0.95, 0.01, below(0.83, swayOverJump));
        assertTrue(below(1, swayOverJump) < 1);
    }

    @Test
    void swayingIsNearlyAlwaysCheaperThanTheGround() {
        assertMedian(0.063, 0.0005, swayOverDetour);
        assertShare(0.93, 0.005, below(0.2, swayOverDetour));
        assertShare(1, 0.005, below(1, swayOverDetour));
    }

    private static double below(double limit, double[] values) {
        int count = 0;
        for (double value : values) {
            count += value < limit ? 1 : 0;
        }
        return (double) count / DRAWS;
    }

    /** Half the last printed digit, and four binomial standard errors of both the script's draws and ours. */
    private static void assertShare(double expected, double halfLastDigit, double share) {
        double error = Math.sqrt(expected * (1 - expected) / DRAWS);
        assertEquals(expected, share, halfLastDigit + 4 * Math.sqrt(2) * error);
    }

    /** Half of the draws lie on either side of the printed median, up to half its last digit and the binomial error. */
    private static void assertMedian(double median, double halfLastDigit, double[] values) {
        double error = 4 * Math.sqrt(2) * Math.sqrt(0.25 / DRAWS);
        assertTrue(below(median - halfLastDigit, values) < 0.5 + error, () -> "median below " + median);
        assertTrue(below(median + halfLastDigit, values) > 0.5 - error, () -> "median above " + median);
    }
}
