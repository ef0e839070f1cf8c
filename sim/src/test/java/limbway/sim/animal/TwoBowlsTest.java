package limbway.sim.animal;

import java.util.List;

import org.junit.jupiter.api.Test;

import limbway.model.enclosure.ResourceKind;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.experiment.RunSettings;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Trip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Two bowls on one platform must not draw twice as many animals as one: the logit is nested by platform. */
class TwoBowlsTest {

    /* Water at two decks that are as far away as each other; the animal decides between them by chance alone. */
    private static Yard yard(boolean second, boolean apart) {
        Yard yard = new Yard()
                .mast("west", 6, 10, 5)
                .deck("west-deck", 6, 10, 2)
                .mast("east", 24, 10, 5)
                .deck("east-deck", 24, 10, 2)
                .on("bowl-west", ResourceKind.WATER, "west-deck", 6, 10.6, 2, 4)
                .on("bowl-east", ResourceKind.WATER, "east-deck", 24, 10.6, 2, 4)
                .at("nest", ResourceKind.NEST, 15, 10, 0, 1)
                .at("hatch", ResourceKind.FOOD, 15, 14, 0, 1)
                .animal("A", "adult female", 1)
                .feed("hatch", "08:00", 6000);
        if (second) {
            yard.on("bowl-east-2", ResourceKind.WATER, apart ? "" : "east-deck", 24, 9.4, 2, 4);
        }
        return yard;
    }

    private static double shareEast(Habitat habitat) {
        int west = habitat.graph().resourceNumber("bowl-west");
        RunSettings settings = new RunSettings(5, 40, 20, Runs.DATE, 2);
        List<Journal> journals = Runs.all(
                        habitat, settings, DaySettings.standard().withoutWorth())
                .journals();
        List<Trip> drinks = journals.stream()
                .flatMap(journal -> journal.trips().stream())
                .filter(trip -> trip.motive() == Motive.THIRST)
                .toList();
        return drinks.stream().filter(trip -> trip.toResource() != west).count() / (double) drinks.size();
    }

    @Test
    void aSecondBowlOnAPlatformDrawsNobodyAway() {
        double one = shareEast(yard(false, false).build());
        double two = shareEast(yard(true, false).build());
        // some 2,400 choices: standard error 0.01 each
        assertEquals(one, two, 0.03);
    }

    /** The same two bowls taken for two sites, because they are not said to be on the platform: the wrong way to count. */
    @Test
    void countedAsTwoSitesTheyWouldDrawMore() {
        double one = shareEast(yard(false, false).build());
        double two = shareEast(yard(true, true).build());
        assertTrue(two > one + 0.06, () -> one + " became " + two);
    }
}
