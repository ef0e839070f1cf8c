package limbway.sim.day;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import limbway.model.scene.RandomEnclosure;
import limbway.model.study.FeedingMethod;
import limbway.sim.RichDays;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.animal.DaySettings;
import limbway.sim.chance.Chance;
import limbway.sim.experiment.RunSettings;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Ledger;
import limbway.sim.journal.Trip;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Nothing is eaten that was not put out, and nothing spent that was not eaten or saved. */
class AccountAuditTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void accountsBalanceAfterEveryEventInAnyYard(long seed) {
        // the strict audit throws inside the run
        Journal journal = Runs.once(random(seed), 3, 1);
        assertDoesNotThrow(() -> Ledger.check(journal), () -> "RandomEnclosure.of(" + seed + "L)");
        assertTrue(
                journal.reserves().stream().anyMatch(reserve -> reserve.eatenJ() > 0),
                () -> "RandomEnclosure.of(" + seed + "L)");
    }

    @Test
    void aPortionThatIsBookedTwiceIsFoundAtOnce() {
        RunPlan plan = new RunPlan(Yard.furnished().build(), DaySettings.standard(), Runs.DATE, 1);
        Larder wrong = new Larder(plan.resources().size()) {
            @Override
            double take(int resource, double atMostJ) {
                super.take(resource, atMostJ);
                return super.take(resource, atMostJ);
            }
        };
        Replication replication = new Replication(plan, new Chance(1, 1), AccountAudit.STRICT, wrong);
        IllegalStateException found = assertThrows(IllegalStateException.class, () -> replication.run(() -> false));
        assertTrue(
                found.getMessage()
                        .matches("ledger: food eaten by all animals = \\d+\\.\\d+ J, by its account \\d+\\.\\d+ J"),
                found.getMessage());
    }

    @Test
    void aTripThatIsMissingFromTheJournalIsFound() {
        Journal whole = Runs.once(Yard.furnished().build(), 2, 1);
        List<Trip> trips = new ArrayList<>(whole.trips());
        trips.remove(3);
        Journal torn = new Journal(1, trips, whole.stays(), whole.reserves(), whole.stocks());
        assertThrows(IllegalStateException.class, () -> Ledger.check(torn));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void accountsBalanceHoweverFoodIsPutOut(long seed) {
        Journal journal = Runs.once(mixed(seed), 3, 1);
        assertDoesNotThrow(() -> Ledger.check(journal), () -> "RandomEnclosure.of(" + seed + "L)");
        assertTrue(
                journal.reserves().stream().anyMatch(reserve -> reserve.eatenJ() > 0 && reserve.otherJ() > 0),
                () -> "RandomEnclosure.of(" + seed + "L)");
    }

    /** With worth of places, followers, closures, contests and days to warm up. */
    @ParameterizedTest
    @MethodSource("seeds")
    void accountsBalanceWhateverHappens(long seed) {
        Habitat rich = RichDays.of(seed % 2 == 0 ? random(seed) : mixed(seed));
        RunSettings settings = new RunSettings((int) seed, 1, 2, Runs.DATE, 1, (int) (seed % 3));
        Journal journal =
                Runs.all(rich, settings, DaySettings.standard()).journals().get(0);
        assertDoesNotThrow(() -> Ledger.check(journal), () -> "RandomEnclosure.of(" + seed + "L)");
        assertTrue(
                journal.reserves().stream().anyMatch(reserve -> reserve.eatenJ() > 0 && reserve.movedJ() > 0),
                () -> "RandomEnclosure.of(" + seed + "L)");
    }

    /** All four ways of feeding at both places, in an order that the seed decides. */
    private static Habitat mixed(long seed) {
        FeedingMethod[] methods = FeedingMethod.values();
        Yard yard = new Yard()
                .animal("A", "flanged male", 1)
                .animal("B", "adult female", 2)
                .animal("C", "juvenile", 3);
        String[] times = {"08:00", "10:30", "13:00", "15:30"};
        for (int i = 0; i < times.length; i++) {
            FeedingMethod method = methods[(int) ((seed + i) % methods.length)];
            FeedingMethod other = methods[(int) ((seed / 4 + 3L * i) % methods.length)];
            yard.feed("hatch", times[i], 2500, method, method == FeedingMethod.PUZZLE ? 2 : 0);
            yard.feed("tray", times[i], 1500, other, other == FeedingMethod.PUZZLE ? 1 : 0);
        }
        return yard.build(RandomEnclosure.of(seed));
    }

    private static Habitat random(long seed) {
        return new Yard()
                .feed("hatch", "08:30", 4000)
                .feed("tray", "08:30", 3000)
                .feed("hatch", "14:00", 7000)
                .animal("A", "flanged male", 1)
                .animal("B", "adult female", 2)
                .animal("C", "juvenile", 3)
                .build(RandomEnclosure.of(seed));
    }
}
