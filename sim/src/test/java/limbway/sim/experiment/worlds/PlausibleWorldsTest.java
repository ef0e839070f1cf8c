package limbway.sim.experiment.worlds;

import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.ToDoubleFunction;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;
import limbway.sim.chance.Chance;
import limbway.sim.chance.Purpose;
import limbway.sim.experiment.screening.Factor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class PlausibleWorldsTest {

    /** Three inputs over 0 to 4, 0 to 1 and 1 to 100 (by equal factors), assumed at 1, 0.5 and 10. */
    private static final List<Factor> INPUTS =
            List.of(factor("costly", 1, 0, 4), factor("idle", 0.5, 0, 1), factor("wide", 10, 1, 100));

    private static final List<String> LAYOUTS = List.of("high", "low");
    private static final List<String> CRITERIA = List.of("first", "second");

    private static Factor factor(String name, double value, double low, double high) {
        return new Factor(new Parameter(name, name, "1", value, low, high, Standing.ASSUMPTION, "invented"));
    }

    /** Two layouts whose difference is a function of the inputs, plus chance of a given spread. */
    private static WorldModel model(ToDoubleFunction<Map<String, Double>> difference, double spread) {
        return (values, first, count, stop) -> {
            if (stop.getAsBoolean()) {
                return new WorldModel.Lived.GivenUp();
            }
            if (values.getOrDefault("costly", 1.0) > 3.9) {
                return new WorldModel.Lived.Refused("too costly");
            }
            double[][][] found = new double[2][count][];
            for (int i = 0; i < count; i++) {
                double chance = spread
                        * (new Chance(7, first + i).stream("x", Purpose.PLACE).uniform(0) - 0.5)
                        * Math.sqrt(12);
                double more = difference.applyAsDouble(values) + chance;
                found[0][i] = new double[] {10 + more, 3};
                found[1][i] = new double[] {10, 3};
            }
            return new WorldModel.Lived.Values(new ByLayout(found));
        };
    }

    private static double costly(Map<String, Double> values) {
        return values.getOrDefault("costly", 1.0);
    }

    private static WorldsFound run(WorldModel model, int worlds, int threads) {
        return PlausibleWorlds.run(INPUTS, LAYOUTS, CRITERIA, model, settings(worlds, threads, 0), quiet())
                .orElseThrow();
    }

    private static WorldSettings settings(int worlds, int threads, int totalPoints) {
        return new WorldSettings(worlds, 2, 3, 40, totalPoints, 5, threads);
    }

    private static WorldProgress quiet() {
        return stoppedWhen(() -> false);
    }

    private static WorldProgress stoppedWhen(BooleanSupplier stop) {
        return new WorldProgress() {
            @Override
            public void finished(Stage stage, int done, int total) {
                // nobody looks
            }

            @Override
            public boolean wantsStop() {
                return stop.getAsBoolean();
            }
        };
    }

    @Test
    @Tag("derived")
    void shareAndReversalOfAKnownDifferenceAreFound() {
        // the high layout has more where costly < 2.9; costly is even over 0 to 4 and refused above 3.9: 2.9 of 3.9
        WorldsFound found = run(model(values -> 2.9 - costly(values), 0), 400, 1);
        PairFound pair = found.pair(0, 1, 0).orElseThrow();
        // strata of 0.01: exactly 10 are refused, and 290 of 390 lie below 2.9
        assertEquals(10, found.refused().size());
        assertEquals("too costly", found.refused().get(0).why());
        assertEquals(290, pair.more());
        assertEquals(100, pair.less());
        assertEquals(0, pair.equal());
        assertEquals(290.0 / 390, pair.share().share(), 1e-12);
        assertTrue(pair.share().lo() < 0.7436 && pair.share().hi() > 0.7436);
        // mean of 2.9 - x for x even over 0 to 3.9, each stratum within 0.01
        assertEquals(0.95, pair.mean(), 0.001);
        assertEquals(0.95 + 0.45 * 3.9, pair.quantiles().get(4), 0.02);
        InputEffect main = pair.main().get(0);
        assertEquals("costly", main.input().parameter().name());
        // 6 bins: all but (1/6)^2 of the spread
        assertEquals(1 - 1.0 / 36, main.index().index(), 0.001);
        assertEquals(1, pair.main().size());
        Reversal reversal = pair.reversals().get(0);
        Reversal.Turn turn = reversal.turn().orElseThrow();
        // the last step is a 256th of the range of 4
        assertEquals(2.9, turn.value(), 4.0 / 256);
        assertTrue(turn.above());
        Reversal.Surroundings sure = turn.confirmed().orElseThrow();
        assertEquals(0.16, sure.high() - sure.low(), 1e-9);
        assertTrue(sure.low() < 2.9 && sure.high() > 2.9 && sure.atLow() > 0 && sure.atHigh() < 0);
        assertFalse(pair.isOneSided());
        // what is the same everywhere is told as such
        PairFound same = found.pair(0, 1, 1).orElseThrow();
        assertEquals(390, same.equal());
        assertTrue(same.main().isEmpty() && same.reversals().isEmpty());
    }

    /**
     * The difference falls by 0.02 over the whole range and each repetition has a spread of 2: at most 0.002 to either side of
     * the turn against a standard error of 2/sqrt(80) = 0.22. Two signs alone would be right in about one of four tries, three
     * tries in one of two turns; that both differ from 0 at 0.05/3 is right by chance in about one of ten thousand.
     */
    @Test
    @Tag("derived")
    void aReversalThatIsChanceIsNotConfirmed() {
        int turns = 0;
        for (int seed = 1; seed <= 30; seed++) {
            int chance = seed;
            WorldModel model = (values, first, count, stop) ->
                    model(v -> 0.005 * (2 - costly(v)), 2).live(values, first + 1000 * chance, count, stop);
            WorldsFound found = PlausibleWorlds.run(
                            INPUTS, LAYOUTS, CRITERIA, model, new WorldSettings(50, 2, 3, 40, 0, seed, 1), quiet())
                    .orElseThrow();
            for (Reversal reversal : found.pair(0, 1, 0).orElseThrow().reversals()) {
                turns += reversal.turn().isPresent() ? 1 : 0;
                assertTrue(reversal.turn().flatMap(Reversal.Turn::confirmed).isEmpty(), "seed " + seed);
            }
        }
        assertTrue(turns > 0, "no turn was looked at");
    }

    @Test
    @Tag("derived")
    void aReversalBelowWhatIsAssumedIsFoundOnALogarithmicRange() {
        // less where wide < 3 while 10 is assumed
        WorldsFound found = run(model(values -> values.getOrDefault("wide", 10.0) - 3, 0), 100, 1);
        Reversal.Turn turn =
                found.pair(0, 1, 0).orElseThrow().reversals().get(0).turn().orElseThrow();
        assertFalse(turn.above());
        // a 256th of the logarithm of 100 is a factor of 1.018
        assertEquals(3, turn.value(), 3 * 0.018);
    }

    @Test
    @Tag("derived")
    void ofTwoReversalsTheNearerIsTold() {
        // more between 0.5 and 1.3 only; assumed is 1
        WorldModel band = model(values -> 0.4 - Math.abs(costly(values) - 0.9), 0);
        Reversal.Turn turn = run(band, 100, 1).pair(0, 1, 0).orElseThrow().reversals().stream()
                .filter(r -> r.input().parameter().name().equals("costly"))
                .findFirst()
                .orElseThrow()
                .turn()
                .orElseThrow();
        assertTrue(turn.above() ? Math.abs(turn.value() - 1.3) < 0.02 : Math.abs(turn.value() - 0.5) < 0.02);
    }

    @Test
    @Tag("derived")
    void whereOneAlwaysHasMoreThereIsNoReversal() {
        PairFound pair = run(model(values -> -5 + costly(values), 0), 100, 1)
                .pair(0, 1, 0)
                .orElseThrow();
        assertTrue(pair.isOneSided());
        assertEquals(0, pair.share().share(), 0);
        assertTrue(pair.share().hi() > 0.03);
        for (Reversal reversal : pair.reversals()) {
            assertTrue(reversal.turn().isEmpty());
            assertTrue(reversal.greatest() < 0);
        }
    }

    @Test
    @Tag("derived")
    void chanceIsTakenApartFromTheInputs() {
        // inputs: variance of costly, even over 3.9, is 3.9^2/12 = 1.2675. Chance: spread 2, two replications: variance
        // 2.
        // share 2/3.2675 = 0.612; over 390 worlds the variance within has a relative error of sqrt(2/390) = 0.07 and
        // the
        // whole one of about the same: 4 times 0.1 of 0.612
        PairFound pair = run(model(values -> 2.9 - costly(values), 2), 400, 1)
                .pair(0, 1, 0)
                .orElseThrow();
        assertEquals(0.612, pair.chanceShare().orElseThrow(), 0.24);
        // the index falls to what the input explains: 0.388, with standard error 2 sqrt(S(1-S)/n) = 0.05
        assertEquals(0.388, pair.effects().get(0).index().index(), 0.16);
        // the search has 40 repetitions under one chance: 2/sqrt(40) = 0.32 either way, four of them
        Reversal.Turn turn = pair.reversals().get(0).turn().orElseThrow();
        assertEquals(2.9, turn.value(), 1.0);
    }

    @Test
    @Tag("derived")
    void anIntervalCoversTheTrueShareAsOftenAsSaid() {
        // with chance of its own in each world, more is a matter of 2.9 - x + noise > 0; strata make the share steadier
        // than
        // independent worlds, so at least 95 % of the intervals cover; 200 of them have a standard error of 1.5 points
        int covered = 0;
        double truth = share(2.9, 2);
        for (int seed = 1; seed <= 200; seed++) {
            int chance = seed;
            WorldModel model = (values, first, count, stop) ->
                    model(v -> 2.9 - costly(v), 2).live(values, first + 1000 * chance, count, stop);
            WorldsFound found = PlausibleWorlds.run(
                            INPUTS, LAYOUTS, CRITERIA, model, new WorldSettings(50, 1, 0, 1, 0, seed, 1), quiet())
                    .orElseThrow();
            PairFound pair = found.pair(0, 1, 0).orElseThrow();
            covered += pair.share().lo() <= truth && truth <= pair.share().hi() ? 1 : 0;
        }
        assertTrue(covered >= 0.92 * 200, "covered = " + covered);
    }

    /** Share of x even over 0 to 3.9 and noise even with a given spread for which limit - x + noise is above 0. */
    private static double share(double limit, double spread) {
        double half = spread * Math.sqrt(3);
        int steps = 100_000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double x = 3.9 * (i + 0.5) / steps;
            sum += Math.min(1, Math.max(0, (limit - x + half) / (2 * half))) / steps;
        }
        return sum;
    }

    @Test
    void anyNumberOfThreadsGivesTheSame() {
        WorldModel model = model(values -> 2.9 - costly(values) * values.getOrDefault("idle", 0.5), 1);
        String one = written(PlausibleWorlds.run(INPUTS, LAYOUTS, CRITERIA, model, settings(60, 1, 8), quiet())
                .orElseThrow());
        for (int threads : new int[] {2, 7}) {
            WorldsFound other = PlausibleWorlds.run(INPUTS, LAYOUTS, CRITERIA, model, settings(60, threads, 8), quiet())
                    .orElseThrow();
            assertEquals(one, written(other));
        }
    }

    private static String written(WorldsFound found) {
        StringBuilder text = new StringBuilder();
        for (World world : found.worlds()) {
            text.append(world.number()).append(world.values()).append(world.found());
        }
        return text.append(found.refused())
                .append(found.pairs())
                .append(found.totals())
                .toString();
    }

    @Test
    @Tag("derived")
    void totalIndicesTellWhatWorksOnlyTogether() {
        // (costly - 2)(idle - 0.5): neither does anything by itself, both together all; costly up to 3.9 only
        WorldModel model = model(v -> (costly(v) - 1.95) * (v.getOrDefault("idle", 0.5) - 0.5), 0);
        WorldsFound found = PlausibleWorlds.run(
                        INPUTS, LAYOUTS, CRITERIA, model, new WorldSettings(50, 1, 0, 1, 1500, 5, 2), quiet())
                .orElseThrow();
        for (TotalEffect effect : found.totals()) {
            boolean acts = !effect.input().parameter().name().equals("wide");
            assertEquals(acts ? 1 : 0, effect.total(), acts ? 5 * effect.totalError() + 0.1 : 1e-12);
            // a product of spreads with standard error of about 1.5 / sqrt(1500)
            assertEquals(0, effect.first(), 0.16);
            assertTrue(effect.points() > 1300 && effect.points() < 1500);
        }
    }

    @Test
    void whatIsEndedEarlyHasNoAnswer() {
        AtomicInteger asked = new AtomicInteger();
        assertTrue(PlausibleWorlds.run(
                        INPUTS,
                        LAYOUTS,
                        CRITERIA,
                        model(PlausibleWorldsTest::costly, 0),
                        settings(50, 2, 0),
                        stoppedWhen(() -> asked.incrementAndGet() > 3))
                .isEmpty());
    }

    @Test
    void tooFewWorldsAreRefused() {
        assertEquals(
                "worlds: worlds = 9, allowed 10 to 2147483647",
                assertThrows(IllegalArgumentException.class, () -> settings(9, 1, 0))
                        .getMessage());
    }
}
