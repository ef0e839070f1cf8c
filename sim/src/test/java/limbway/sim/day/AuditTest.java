package limbway.sim.day;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import limbway.model.enclosure.ResourceKind;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.animal.DaySettings;
import limbway.sim.chance.Chance;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Ledger;
import limbway.sim.journal.Trip;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Nothing is eaten that was not put out, and nothing spent that was not eaten or saved. */
class AuditTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void accountsBalanceAfterEveryEventInAnyYard(long seed) {
        // the strict audit throws inside the run
        Journal journal = Runs.once(random(seed), 3, 1);
        assertDoesNotThrow(() -> Ledger.check(journal), () -> "random(" + seed + "L)");
        assertTrue(
                journal.reserves().stream().anyMatch(reserve -> reserve.eatenJ() > 0), () -> "random(" + seed + "L)");
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
        Replication replication = new Replication(plan, new Chance(1, 1), Audit.STRICT, wrong);
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

    private static Habitat random(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Yard yard = new Yard();
        int masts = random.nextInt(2, 6);
        double[] x = random.doubles(masts, 2, 28).toArray();
        double[] y = random.doubles(masts, 2, 18).toArray();
        double[] z = random.doubles(masts, 1, 6).toArray();
        for (int i = 0; i < masts; i++) {
            yard.mast("mast-" + i, x[i], y[i], z[i] + 1).deck("deck-" + i, x[i], y[i], z[i]);
            int next = (i + 1) % masts;
            yard.rope("rope-" + i, x[i], y[i], z[i] + 0.5, x[next], y[next], z[next] + 0.5);
        }
        for (int i = 0; i < 10; i++) {
            ResourceKind kind = ResourceKind.values()[i % 5];
            int on = random.nextInt(masts + 1);
            int stalls = random.nextInt(1, 3);
            String id = kind.word() + "-" + i;
            if (on == masts) {
                yard.at(id, kind, random.nextDouble(1, 29), random.nextDouble(1, 19), 0, stalls);
            } else {
                yard.on(id, kind, "deck-" + on, x[on], y[on], z[on], stalls);
            }
            if (kind == ResourceKind.FOOD) {
                yard.feed(id, "08:30", random.nextDouble(500, 9000)).feed(id, "14:00", random.nextDouble(500, 9000));
            }
        }
        yard.animal("A", "flanged male", 1).animal("B", "adult female", 2).animal("C", "juvenile", 3);
        return yard.build();
    }
}
