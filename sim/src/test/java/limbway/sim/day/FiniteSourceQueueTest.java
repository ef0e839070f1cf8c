package limbway.sim.day;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import sim.engine.SimState;

import limbway.model.enclosure.ResourceKind;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.animal.Ape;
import limbway.sim.animal.DaySettings;
import limbway.sim.animal.Stalls;
import limbway.sim.chance.Chance;
import limbway.sim.chance.Purpose;
import limbway.sim.chance.Stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/**
 * A few animals that come back to one feeder again and again: the finite-source queue, of which everything is known.
 *
 * <p>Four animals, each back on average 60 minutes after it has left, one stall held for 15 minutes on average, both
 * exponential, first come first served: the share of time with n animals there is proportional to N!/(N-n)! times
 * (lambda/mu) to the power n. Textbook result, from memory. The animals use the stalls and queues of the day, on MASON's
 * schedule.
 */
class FiniteSourceQueueTest {

    private static final int ANIMALS = 4;
    private static final double RETURN_PER_MIN = 1.0 / 60;
    private static final double SERVICE_PER_MIN = 1.0 / 15;
    private static final double MINUTES = 4e6;
    private static final double STANDARD_ERRORS = 4;

    /** What was seen in one long run, or is to be expected. */
    private record Figures(List<Double> shares, double length, double perHour, double waitMin) {}

    /** Four animals and a feeder, for as long as it is asked to go on. */
    private static final class Feeder extends SimState {

        private static final long serialVersionUID = 1;

        private final transient List<Ape> group;
        private final transient Stalls stalls;
        private final transient Stream[] chances;
        private final long[] drawn = new long[ANIMALS];
        private final double[] cameMin = new double[ANIMALS];
        private final double[] minutesWith = new double[ANIMALS + 1];
        private final double heldMin;
        private int there;
        private double sinceMin;
        private double waitedMin;
        private int served;

        Feeder(int stallCount, double heldMin, int seed) {
            super(seed);
            this.heldMin = heldMin;
            Yard yard = new Yard().at("hatch", ResourceKind.FOOD, 15, 10, 0, stallCount);
            for (int i = 0; i < ANIMALS; i++) {
                yard.animal("animal-" + i, "adult female", i + 1);
            }
            RunPlan plan = new RunPlan(yard.build(), DaySettings.standard(), Runs.DATE, 1);
            Chance chance = new Chance(seed, 1);
            group = plan.group(chance);
            stalls = new Stalls(plan.resources());
            chances = group.stream()
                    .map(ape -> chance.stream(ape.animal().name(), Purpose.PLACE))
                    .toArray(Stream[]::new);
        }

        Figures run() {
            group.forEach(ape -> in(ape, 1 / RETURN_PER_MIN, () -> come(ape)));
            while (schedule.getTime() < MINUTES && schedule.step(this)) {
                // events do all the work
            }
            double[] shares = new double[ANIMALS + 1];
            double length = 0;
            for (int n = 0; n <= ANIMALS; n++) {
                shares[n] = minutesWith[n] / sinceMin;
                length += n * shares[n];
            }
            return new Figures(
                    DoubleStream.of(shares).boxed().toList(), length, 60 * served / sinceMin, waitedMin / served);
        }

        private void in(Ape ape, double meanMin, Runnable what) {
            double u = chances[ape.number()].uniform(drawn[ape.number()]++);
            double min = Math.max(0, schedule.getTime()) - meanMin * StrictMath.log(u);
            schedule.scheduleOnce(min, ape.number(), state -> {
                minutesWith[there] += min - sinceMin;
                sinceMin = min;
                ape.advance(Math.round(60_000 * min));
                what.run();
            });
        }

        private void come(Ape ape) {
            there++;
            cameMin[ape.number()] = sinceMin;
            if (!use(ape)) {
                stalls.queue(ape, 0);
            }
        }

        private boolean use(Ape ape) {
            ape.advance(Math.round(60_000 * sinceMin));
            if (!stalls.take(ape, 0)) {
                return false;
            }
            served++;
            waitedMin += sinceMin - cameMin[ape.number()];
            in(ape, heldMin, () -> leave(ape));
            return true;
        }

        private void leave(Ape ape) {
            there--;
            stalls.leave(ape);
            for (Optional<Ape> next = stalls.called(); next.isPresent(); next = stalls.called()) {
                assertTrue(use(next.get()), "who is called finds a stall");
            }
            in(ape, 1 / RETURN_PER_MIN, () -> come(ape));
        }
    }

    private static double birth(int n) {
        return (ANIMALS - n) * RETURN_PER_MIN;
    }

    private static double[] shares() {
        double[] shares = new double[ANIMALS + 1];
        shares[0] = 1;
        double sum = 1;
        for (int n = 1; n <= ANIMALS; n++) {
            shares[n] = shares[n - 1] * birth(n - 1) / SERVICE_PER_MIN;
            sum += shares[n];
        }
        for (int n = 0; n <= ANIMALS; n++) {
            shares[n] /= sum;
        }
        return shares;
    }

    private static Figures expected() {
        double[] shares = shares();
        double length = 0;
        for (int n = 0; n <= ANIMALS; n++) {
            length += n * shares[n];
        }
        double perMin = SERVICE_PER_MIN * (1 - shares[0]);
        // Little's law for those who wait
        return new Figures(
                DoubleStream.of(shares).boxed().toList(), length, 60 * perMin, (length - (1 - shares[0])) / perMin);
    }

    /**
     * Variance of the mean of f over a time T, times T, in a chain that goes up and down by one: twice the sum over j of
     * (sum to j of (f - mean) p) squared over (birth rate times p) at j. Whitt 1989, doi 10.1287/mnsc.35.11.1341 and
     * Burman 1980, from memory.
     */
    private static double variance(double[] shares, double[] births, double[] f) {
        double mean = 0;
        for (int n = 0; n < f.length; n++) {
            mean += shares[n] * f[n];
        }
        double sum = 0;
        double below = 0;
        for (int j = 0; j < f.length - 1; j++) {
            below += (f[j] - mean) * shares[j];
            sum += below * below / (births[j] * shares[j]);
        }
        return 2 * sum;
    }

    /** The variance for one stall and an endless source, load 1/2: 2 rho (1 + rho)/(1 - rho)^4 = 24 service times. */
    @Test
    @Tag("published")
    void theFormulaOfTheVarianceGivesWhittsNumber() {
        int most = 50;
        double[] shares = new double[most];
        double[] births = new double[most];
        double[] f = new double[most];
        for (int n = 0; n < most; n++) {
            shares[n] = StrictMath.pow(0.5, n + 1);
            births[n] = 0.5;
            f[n] = n;
        }
        // beyond 50 lies 2^-50 of the time; rounding of the mean, divided by shares as small, leaves 1e-7
        assertEquals(24, variance(shares, births, f), 1e-5);
    }

    @Test
    @Tag("derived")
    void theFormulaOfTheSharesGivesTheKnownNumbers() {
        Figures known = expected();
        double[] shares = {0.31068, 0.31068, 0.23301, 0.11650, 0.02913};
        for (int n = 0; n <= ANIMALS; n++) {
            assertEquals(shares[n], known.shares.get(n), 0.5e-5);
        }
        assertEquals(1.24272, known.length, 0.5e-5);
        assertEquals(2.75728, known.perHour, 0.5e-5);
        assertEquals(12.0423, known.waitMin, 0.5e-4);
    }

    /** The worst of all figures, in standard errors. About 184,000 uses in four million minutes. */
    private static double worst(Figures found) {
        Figures known = expected();
        double[] births = new double[ANIMALS];
        double[] numbers = new double[ANIMALS + 1];
        double[] busy = new double[ANIMALS + 1];
        double[] waiting = new double[ANIMALS + 1];
        for (int n = 0; n <= ANIMALS; n++) {
            numbers[n] = n;
            busy[n] = n > 0 ? 1 : 0;
            waiting[n] = Math.max(0, n - 1);
            if (n < ANIMALS) {
                births[n] = birth(n);
            }
        }
        double worst = Math.abs(found.length - known.length) / error(births, numbers);
        for (int k = 0; k <= ANIMALS; k++) {
            double[] isK = new double[ANIMALS + 1];
            isK[k] = 1;
            worst = Math.max(worst, Math.abs(found.shares.get(k) - known.shares.get(k)) / error(births, isK));
        }
        // uses are those that the busy time brings, and their own Poisson spread; at most the two errors add up
        double perMin = known.perHour / 60;
        double usesError = SERVICE_PER_MIN * error(births, busy) + StrictMath.sqrt(perMin / MINUTES);
        worst = Math.max(worst, Math.abs(found.perHour - known.perHour) / (60 * usesError));
        // the wait is the mean number waiting over the uses; again at most the two errors add up
        double waitError = known.waitMin
                * (error(births, waiting) / (known.length - 1 + known.shares.get(0)) + usesError / perMin);
        return Math.max(worst, Math.abs(found.waitMin - known.waitMin) / waitError);
    }

    private static double error(double[] births, double[] f) {
        return StrictMath.sqrt(variance(shares(), births, f) / MINUTES);
    }

    @Test
    @Tag("derived")
    void whoWaitsWhereAndHowLongIsThatOfTheKnownQueue() {
        assertTrue(worst(new Feeder(1, 15, 5).run()) < STANDARD_ERRORS);
    }

    @Test
    void aStallHeldATenthLongerOrASecondStallWouldBeSeen() {
        assertTrue(worst(new Feeder(1, 16.5, 5).run()) > STANDARD_ERRORS);
        assertTrue(worst(new Feeder(2, 15, 5).run()) > STANDARD_ERRORS);
    }

    /** The second of two in the queue waits for two uses of 15 minutes; about 184,000 uses, so the mean is good to 0.24 %. */
    @Test
    @Tag("derived")
    void theExpectedWaitIsTheUsesThatMustEndTimesTheirMeanLength() {
        Feeder feeder = new Feeder(1, 15, 6);
        feeder.run();
        feeder.group.forEach(feeder.stalls::quit);
        Ape holder = feeder.group.get(0);
        feeder.group.forEach(feeder.stalls::leave);
        assertTrue(feeder.stalls.take(holder, 0));
        feeder.stalls.queue(feeder.group.get(2), 0);
        feeder.stalls.queue(feeder.group.get(1), 0);
        // four standard errors of a mean of 184,000 exponential times are 0.9 %
        double oneUseMs = 15 * 60_000;
        assertEquals(oneUseMs, feeder.stalls.expectedWaitMs(feeder.group.get(2), 0), 0.01 * oneUseMs);
        assertEquals(2 * oneUseMs, feeder.stalls.expectedWaitMs(feeder.group.get(1), 0), 0.01 * 2 * oneUseMs);
        feeder.stalls.leave(holder);
        assertEquals(feeder.group.get(2), feeder.stalls.called().orElseThrow(), "first come first served");
        assertNotEquals(
                true, feeder.stalls.isFree(holder, 0), "a stall that somebody waits for is free to nobody else");
    }
}
