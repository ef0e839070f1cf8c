package limbway.model.energy;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Against the cheapest of all pairs of directions on a plane, searched by brute force. */
@Tag("derived")
class ZigzagCostTest {

    private static final double STEP_DEG = 0.25;

    @ParameterizedTest
    @CsvSource({"6,5", "6,25", "40,5", "40,12", "40,18", "40,25", "40,40", "80,30"})
    void noMixOfTwoDirectionsOnAPlaneIsCheaper(double massKg, double planeDeg) {
        ZigzagCost cost = new ZigzagCost(massKg);
        double sine = StrictMath.sin(StrictMath.toRadians(planeDeg));
        int n = (int) (360 / STEP_DEG);
        double[] straight = new double[n];
        for (int k = 0; k < n; k++) {
            straight[k] = InclineCost.jPerKgM(massKg, slopeDeg(sine, k * STEP_DEG));
        }
        for (int k = 0; k < n; k += 20) {
            double best = straight[k];
            for (int left = 1; left < n / 2; left++) {
                for (int right = 1; left + right < n / 2; right++) {
                    best = Math.min(best, mixed(straight, k, left, right));
                }
            }
            double priced = cost.jPerKgM(slopeDeg(sine, k * STEP_DEG));
            // the search knows directions to a quarter of a degree only, and can but miss the cheapest mix
            assertTrue(priced <= best * (1 + 1e-9), "dearer than a mix at " + k * STEP_DEG);
            assertEquals(best, priced, 1e-4 * best, "cheaper than any mix at " + k * STEP_DEG);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {6, 17.5, 40, 120})
    void heightIsGainedMostCheaplyBetweenFourteenAndNineteenDegrees(double massKg) {
        ZigzagCost cost = new ZigzagCost(massKg);
        double bestDeg = cost.cheapestSlopeDeg();
        assertTrue(bestDeg > 14 && bestDeg < 19, () -> "cheapest slope " + bestDeg);
        double best = perRise(massKg, bestDeg);
        for (double deg = 1; deg <= 90; deg += 0.5) {
            assertTrue(best <= perRise(massKg, deg) * (1 + 1e-12), "cheaper at " + deg);
        }
    }

    private static double perRise(double massKg, double deg) {
        return InclineCost.jPerKgM(massKg, deg) / StrictMath.sin(StrictMath.toRadians(deg));
    }

    /** One metre ahead, made of a way turned to the left and one turned to the right: the law of sines. */
    private static double mixed(double[] straight, int k, int left, int right) {
        int n = straight.length;
        double l = StrictMath.toRadians(left * STEP_DEG);
        double r = StrictMath.toRadians(right * STEP_DEG);
        double whole = StrictMath.sin(l + r);
        return (straight[(k + left) % n] * StrictMath.sin(r) + straight[(k - right + n) % n] * StrictMath.sin(l))
                / whole;
    }

    private static double slopeDeg(double planeSine, double turnDeg) {
        return StrictMath.toDegrees(StrictMath.asin(planeSine * StrictMath.cos(StrictMath.toRadians(turnDeg))));
    }
}
