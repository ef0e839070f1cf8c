package limbway.sim.food;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import static org.junit.jupiter.api.Assertions.assertEquals;

class GainCurveTest {

    private static final double PUT_OUT_J = 5_000_000;
    private static final double FULL_J_PER_MS = 0.7;

    @ParameterizedTest
    @EnumSource
    void timeAndWhatIsLeftAfterItAreInverse(GainCurve curve) {
        double fromJ = 0.8 * PUT_OUT_J;
        double ms = curve.timeMs(PUT_OUT_J, FULL_J_PER_MS, fromJ, 0.3 * PUT_OUT_J);
        assertEquals(0.3, curve.leftAfterJ(PUT_OUT_J, FULL_J_PER_MS, fromJ, ms) / PUT_OUT_J, 1e-14);
    }

    @ParameterizedTest
    @EnumSource
    void eatingInTwoBoutsTakesAsLongAsInOne(GainCurve curve) {
        double whole = curve.timeMs(PUT_OUT_J, FULL_J_PER_MS, PUT_OUT_J, 0.2 * PUT_OUT_J);
        double first = curve.timeMs(PUT_OUT_J, FULL_J_PER_MS, PUT_OUT_J, 0.6 * PUT_OUT_J);
        double second = curve.timeMs(PUT_OUT_J, FULL_J_PER_MS, 0.6 * PUT_OUT_J, 0.2 * PUT_OUT_J);
        assertEquals(1, (first + second) / whole, 1e-14);
    }

    /** Over a step of a millionth of the time constant the mean speed is that of the middle to 1e-12. */
    @ParameterizedTest
    @EnumSource
    @Tag("derived")
    void theSpeedIsTheSlopeOfTheCurve(GainCurve curve) {
        double ms = 1e-6 * PUT_OUT_J / FULL_J_PER_MS;
        double fromJ = 0.5 * PUT_OUT_J;
        double toJ = curve.leftAfterJ(PUT_OUT_J, FULL_J_PER_MS, fromJ, ms);
        double speed = curve.speedJPerMs(PUT_OUT_J, FULL_J_PER_MS, (fromJ + toJ) / 2);
        // the difference of two numbers of 2.5e6 keeps nine digits
        assertEquals(1, (fromJ - toJ) / ms / speed, 1e-8);
    }

    @ParameterizedTest
    @EnumSource(names = {"EXPONENTIAL", "HYPERBOLIC"})
    void whereItIsLeftTheSpeedIsTheLeastPutUpWith(GainCurve curve) {
        double leaveAtJ = curve.leaveAtJ(PUT_OUT_J, FULL_J_PER_MS, 0.2);
        assertEquals(0.2, curve.speedJPerMs(PUT_OUT_J, FULL_J_PER_MS, leaveAtJ), 1e-15);
    }
}
