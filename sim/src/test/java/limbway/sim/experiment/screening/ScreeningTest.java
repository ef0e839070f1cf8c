package limbway.sim.experiment.screening;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.ToDoubleFunction;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;
import limbway.sim.experiment.Progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class ScreeningTest {

    private static final Progress UNWATCHED = (done, total) -> {};

    /** 3 a - 2 b over a from 0 to 10 and b from -1 to 1: effects are slope times range, whatever the walk. */
    @Test
    @Tag("derived")
    void onAPlaneTheEffectIsSlopeTimesRange() {
        List<Factor> factors = List.of(factor("a", 0, 10), factor("b", -1, 1), factor("idle", 0, 1));
        List<Effect> effects =
                screen(factors, 10, 1, x -> 3 * x.get("a") - 2 * x.get("b")).effects(0);
        // differences of sums of size 30: a few units in the last place
        assertEquals(30, effects.get(0).mean(), 1e-12);
        assertEquals(30, effects.get(0).meanAbsolute(), 1e-12);
        assertEquals(0, effects.get(0).spread().orElseThrow(), 1e-12);
        assertEquals(-4, effects.get(1).mean(), 1e-12);
        assertEquals(4, effects.get(1).meanAbsolute(), 1e-12);
        assertEquals(0, effects.get(1).standardError().orElseThrow(), 1e-12);
        assertEquals(0, effects.get(2).meanAbsolute());
        assertEquals(10, effects.get(2).n());
    }

    /** a b over 0 to 1 each: the effect of a is b, which is 0, 1/3, 2/3 or 1. */
    @Test
    @Tag("derived")
    void anEffectThatDependsOnAnotherFactorIsSpread() {
        List<Factor> factors = List.of(factor("a", 0, 1), factor("b", 0, 1));
        List<Effect> effects =
                screen(factors, 40, 1, x -> x.get("a") * x.get("b")).effects(0);
        for (Effect effect : effects) {
            // b has mean 1/2 and standard deviation 0.373; over 40 walks four standard errors are 0.24
            assertEquals(0.5, effect.mean(), 0.24);
            assertTrue(effect.spread().orElseThrow() > 0.2, effect.toString());
        }
    }

    /**
     * Ishigami and Homma 1990, a = 7, b = 0.1, each number from -pi to pi. At the four levels the sine is 0, -0.866, 0.866
     * and 0. So x2 moves the answer by 7 · 0.75 at every step, up from one half of its starts and down from the other; x3
     * moves it by 0.1 pi⁴ (1 - 1/81) 0.866 in the half of the walks in which the sine of x1 is not 0.
     */
    @Test
    @Tag("derived")
    void effectsThatCancelInTheMeanAreSeenInTheMeanAbsoluteEffect() {
        List<Factor> factors = List.of(
                factor("x1", -Math.PI, Math.PI), factor("x2", -Math.PI, Math.PI), factor("x3", -Math.PI, Math.PI));
        List<Effect> effects = screen(factors, 200, 3, x -> {
                    double sine = Math.sin(x.get("x1"));
                    return sine + 7 * Math.pow(Math.sin(x.get("x2")), 2) + 0.1 * Math.pow(x.get("x3"), 4) * sine;
                })
                .effects(0);
        // 200 walks are 50 full rounds of the four starts, so the mean of x2 is 0 but for rounding
        assertEquals(7 * 0.75 * 1.5, effects.get(1).meanAbsolute(), 1e-9);
        assertEquals(0, effects.get(1).mean(), 1e-9);
        double size = 0.1 * Math.pow(Math.PI, 4) * (1 - 1 / 81.0) * Math.sqrt(0.75) * 1.5;
        // either 0 or this size, each in half of the walks: four standard errors are 4 · size/2 / sqrt(200)
        assertEquals(size / 2, effects.get(2).meanAbsolute(), 4 * size / 2 / Math.sqrt(200));
        // by the mean alone x3 would be taken for idle: its mean is 0, with a standard deviation of size/sqrt(2)
        assertEquals(0, effects.get(2).mean(), 4 * size / Math.sqrt(2) / Math.sqrt(200));
        assertTrue(effects.get(2).spread().orElseThrow() > effects.get(2).meanAbsolute());
    }

    /** Sobol' g function with a = (0, 1, 4.5, 9, 99, 99, 99, 99): the smaller a, the more a number matters. */
    @Test
    @Tag("published")
    void numbersAreRankedAsInTheGFunction() {
        double[] a = {0, 1, 4.5, 9, 99, 99, 99, 99};
        List<Factor> factors = new ArrayList<>();
        for (int i = 0; i < a.length; i++) {
            factors.add(factor("x" + i, 0, 1));
        }
        List<Effect> effects = screen(factors, 40, 5, x -> {
                    double product = 1;
                    for (int i = 0; i < a.length; i++) {
                        product *= (Math.abs(4 * x.get("x" + i) - 2) + a[i]) / (1 + a[i]);
                    }
                    return product;
                })
                .effects(0);
        for (int i = 0; i < 4; i++) {
            assertTrue(effects.get(i).meanAbsolute() > effects.get(i + 1).meanAbsolute(), "x" + i);
        }
        for (int i = 4; i < a.length; i++) {
            assertTrue(effects.get(i).meanAbsolute() < 0.05 * effects.get(0).meanAbsolute(), "x" + i);
        }
    }

    /** A whole number moves by more or less than two thirds of its range, and its effect is scaled by what it moved. */
    @Test
    @Tag("derived")
    void roundedNumbersAreScaledByWhatTheyMoved() {
        class Rounding implements ScreenedModel {
            @Override
            public Optional<double[]> answers(Map<String, Double> values, BooleanSupplier stop) {
                return Optional.of(new double[] {5 * values.get("n")});
            }

            @Override
            public Map<String, Double> used(Map<String, Double> wanted) {
                Map<String, Double> used = new LinkedHashMap<>(wanted);
                used.replaceAll((name, value) -> (double) Math.round(value));
                return used;
            }
        }
        Screened found = Screening.run(List.of(factor("n", 1, 8)), 8, 1, 1, Rounding::new, UNWATCHED);
        Effect effect = found.effects(0).get(0);
        assertEquals(35, effect.meanAbsolute(), 1e-12);
        assertEquals(0, effect.spread().orElseThrow(), 1e-12);
    }

    /** Combinations that the model refuses are drawn anew, and that is counted. */
    @Test
    void walksThroughRefusedCombinationsAreDrawnAnew() {
        class Ordered implements ScreenedModel {
            @Override
            public Optional<double[]> answers(Map<String, Double> values, BooleanSupplier stop) {
                assertTrue(values.get("low") <= values.get("high"));
                return Optional.of(new double[] {values.get("high") - values.get("low")});
            }

            @Override
            public Map<String, Double> used(Map<String, Double> wanted) {
                if (wanted.get("low") > wanted.get("high")) {
                    throw new IllegalArgumentException("low above high");
                }
                return wanted;
            }
        }
        Screened found =
                Screening.run(List.of(factor("low", 0, 2), factor("high", 1, 3)), 12, 1, 1, Ordered::new, UNWATCHED);
        assertEquals(12, found.trajectories());
        assertTrue(found.redrawn() > 0);
        // from one end to the other is 2, down for the one and up for the other
        assertEquals(-2, found.effects(0).get(0).mean(), 1e-12);
        assertEquals(2, found.effects(0).get(1).mean(), 1e-12);
    }

    @Test
    void aModelThatRefusesEverythingIsRefused() {
        class Never implements ScreenedModel {
            @Override
            public Optional<double[]> answers(Map<String, Double> values, BooleanSupplier stop) {
                return Optional.empty();
            }

            @Override
            public Map<String, Double> used(Map<String, Double> wanted) {
                throw new IllegalArgumentException("no");
            }
        }
        assertThrows(
                IllegalArgumentException.class,
                () -> Screening.run(List.of(factor("a", 0, 1)), 2, 1, 1, Never::new, UNWATCHED));
    }

    @Test
    void aMissingAnswerLeavesOutTheStepsThatTouchIt() {
        List<Factor> factors = List.of(factor("a", 0, 1), factor("b", 0, 1));
        Screened found = screen(factors, 8, 1, x -> x.get("a") > 0.9 ? Double.NaN : x.get("b"));
        Effect ofB = found.effects(0).get(1);
        assertTrue(ofB.n() > 0 && ofB.n() < 8, ofB.toString());
        assertEquals(1, ofB.mean(), 1e-12);
        assertTrue(found.answers(0).size() < found.evaluations());
    }

    @Test
    void twoThreadsGiveWhatOneGives() {
        List<Factor> factors = List.of(factor("a", 0, 1), factor("b", 0, 1), factor("c", 0, 1));
        ToDoubleFunction<Map<String, Double>> model = x -> Math.exp(x.get("a") * x.get("b")) - x.get("c");
        Screened one = Screening.run(factors, 9, 4, 1, () -> pure(model), UNWATCHED);
        Screened two = Screening.run(factors, 9, 4, 2, () -> pure(model), UNWATCHED);
        assertEquals(one.effects(0), two.effects(0));
        assertEquals(one.answers(0), two.answers(0));
    }

    @Test
    void whatIsFinishedWhenItIsStoppedIsTold() {
        List<Factor> factors = List.of(factor("a", 0, 1), factor("b", 0, 1));
        AtomicInteger calls = new AtomicInteger();
        // the second walk waits until it is told to give up
        ScreenedModel slow = (values, stop) -> {
            if (calls.incrementAndGet() <= 3) {
                return Optional.of(new double[] {values.get("a")});
            }
            while (!stop.getAsBoolean()) {
                Thread.onSpinWait();
            }
            return Optional.empty();
        };
        class Impatient implements Progress {
            @Override
            public void finished(int done, int total) {
                assertEquals(15, total);
            }

            @Override
            public boolean wantsStop() {
                return calls.get() > 3;
            }
        }
        Screened found = Screening.run(factors, 5, 1, 1, () -> slow, new Impatient());
        assertFalse(found.isComplete());
        assertEquals(1, found.trajectories());
        assertEquals(3, found.evaluations());
        assertEquals(1, found.effects(0).get(0).n());
        assertTrue(found.effects(0).get(0).standardError().isEmpty());
    }

    private static Screened screen(
            List<Factor> factors, int walks, int seed, ToDoubleFunction<Map<String, Double>> model) {
        return Screening.run(factors, walks, seed, 1, () -> pure(model), UNWATCHED);
    }

    private static ScreenedModel pure(ToDoubleFunction<Map<String, Double>> model) {
        return (values, stop) -> Optional.of(new double[] {model.applyAsDouble(values)});
    }

    private static Factor factor(String name, double low, double high) {
        return new Factor(new Parameter(name, name, "1", low, low, high, Standing.ASSUMPTION, "no source"));
    }
}
