package limbway.sim.day;

import org.junit.jupiter.api.Test;

import limbway.model.enclosure.ResourceKind;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.animal.DaySettings;
import limbway.sim.chance.Chance;
import limbway.sim.journal.Journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What does not concern an animal leaves its days alone, to the last bit. */
class SameChanceTest {

    private static final int DAYS = 5;
    private static final int SEED = 11;

    private final Journal usual = Runs.once(Yard.furnished().build(), DAYS, SEED);

    @Test
    void theSameSeedGivesTheSameJournal() {
        Runs.assertAlike(usual, Runs.once(Yard.furnished().build(), DAYS, SEED));
        assertFalse(usual.equals(Runs.once(Yard.furnished().build(), DAYS, SEED + 1)));
    }

    @Test
    void aPlaceThatNobodyCanReachAndItsFeedingsChangeNothing() {
        Journal journal = Runs.once(
                Yard.furnished()
                        .at("cloud", ResourceKind.FOOD, 15, 10, 19, 1)
                        .feed("cloud", "10:07", 900)
                        .build(),
                DAYS,
                SEED);
        Runs.assertAlike(usual.trips(), journal.trips());
        Runs.assertAlike(usual.stays(), journal.stays());
        Runs.assertAlike(usual.reserves(), journal.reserves());
    }

    @Test
    void eventsThatMeanNothingChangeNothing() {
        RunPlan plan =
                new RunPlan(Yard.furnished().build(), DaySettings.standard().withoutWorth(), Runs.DATE, DAYS);
        Replication replication = new Replication(plan, new Chance(SEED, 1), AccountAudit.STRICT);
        int[] happened = {0};
        for (int i = 0; i < 5000; i++) {
            // pairs at the same moment with the same order, so that MASON has to shuffle them
            replication.schedule.scheduleOnce((double) (i / 2 * 100_000L), 0, state -> happened[0]++);
        }
        Journal journal = replication.run(() -> false).orElseThrow();
        assertEquals(5000, happened[0]);
        Runs.assertAlike(usual, journal);
    }

    @Test
    void oneMoreAnimalFarAwayLeavesTheOthersAlone() {
        Yard island = Yard.furnished();
        addIsland(island);
        Journal before = Runs.once(island.build(), DAYS, SEED);
        // a rank of its own below the others would set all ranks further apart, and with them the contests
        Journal after = Runs.once(island.animal("F", "adult female", 5).build(), DAYS, SEED);
        assertTrue(after.trips().stream().anyMatch(trip -> trip.animal() == 5), "the new animal lives");
        Runs.assertAlike(Runs.tripsOfFirst(before, 5), Runs.tripsOfFirst(after, 5));
        Runs.assertAlike(Runs.staysOfFirst(before, 5), Runs.staysOfFirst(after, 5));
    }

    /** Two decks that hang high above the yard, with all that an animal needs. */
    private static void addIsland(Yard yard) {
        yard.deck("island", 15, 10, 19).deck("islet", 17.5, 10, 19);
        yard.on("island-nest", ResourceKind.NEST, "island", 15, 10, 19, 1);
        yard.on("island-tray", ResourceKind.FOOD, "islet", 17.5, 10, 19, 1);
        yard.on("island-water", ResourceKind.WATER, "islet", 18, 10.5, 19, 1);
        yard.feed("island-tray", "09:00", 6000);
    }
}
