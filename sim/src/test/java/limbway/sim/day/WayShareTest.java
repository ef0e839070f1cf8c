package limbway.sim.day;

import java.util.List;

import org.junit.jupiter.api.Test;

import limbway.model.enclosure.ResourceKind;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Trip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Which of the two ways is taken, over many trips. */
class WayShareTest {

    /** Two low decks so far apart that the rope between them costs about as much as the way over the ground. */
    private static Yard balanced() {
        return new Yard()
                .mast("west", 3, 10, 3)
                .mast("east", 24, 10, 3)
                .deck("west-deck", 3, 10, 1.2)
                .deck("east-deck", 24, 10, 1.2)
                .rope("rope", 3, 10, 1.5, 24, 10, 1.5)
                .on("nest", ResourceKind.NEST, "west-deck", 2.5, 10, 1.2, 2)
                .on("drinker", ResourceKind.WATER, "west-deck", 3.5, 9.5, 1.2, 2)
                .on("tray", ResourceKind.FOOD, "east-deck", 24.5, 10, 1.2, 2)
                .feed("tray", "08:00", 2000)
                .feed("tray", "11:00", 2000)
                .feed("tray", "14:00", 2000)
                .animal("A", "adult female", 1);
    }

    private static List<Trip> trips(Habitat habitat) {
        return Runs.all(habitat, 100, 9, 20, 2).journals().stream()
                .flatMap(journal -> journal.trips().stream())
                .filter(trip -> trip.ways().offGround().isPresent()
                        && trip.ways().overGround().isPresent())
                .toList();
    }

    @Test
    void waysAreTakenInTheSharesOfTheLogit() {
        List<Trip> trips = trips(balanced().build());
        Trip sample = trips.stream()
                .filter(trip -> trip.toResource() == 2)
                .findFirst()
                .orElseThrow();
        List<Trip> alike =
                trips.stream().filter(trip -> trip.ways().equals(sample.ways())).toList();
        double share = sample.ways().offGroundShare();
        long off = alike.stream().filter(trip -> !trip.way().usesGround()).count();
        assertTrue(alike.size() >= 8000, () -> "n = " + alike.size());
        assertTrue(share > 0.05 && share < 0.95 && Math.abs(share - 0.5) > 0.05, () -> "share = " + share);
        assertTrue(agrees(alike.size(), off, share), () -> off + " of " + alike.size() + ", share " + share);
        assertFalse(agrees(alike.size(), off, 1 - share), "the shares exchanged must not pass");
    }

    /**
     * Within four standard errors of a binomial count: a right program fails for one seed in 16000. With 8000 trips and a
     * share near 0.22 that is 0.018; draws that are wrong by a tenth do not pass.
     */
    private static boolean agrees(int trips, long taken, double share) {
        return Math.abs(taken - trips * share) <= 4 * Math.sqrt(trips * share * (1 - share));
    }

    @Test
    void withInfiniteSharpnessTheCheapestWayIsAlwaysTaken() {
        List<Trip> strict = trips(balanced().sharpness(Double.POSITIVE_INFINITY).build());
        strict.forEach(
                trip -> assertEquals(trip.ways().cheapest().milliJ(), trip.way().milliJ()));
        assertTrue(
                trips(balanced().build()).stream()
                        .anyMatch(trip ->
                                trip.way().milliJ() > trip.ways().cheapest().milliJ()),
                "with the default it is not");
    }

    @Test
    void animalsStayOffTheGroundWhereAllIsAloftAndLeaveItWhereFoodIsBelow() {
        double aloft = Runs.offGroundShare(Runs.once(high(5).build(), 20, 1));
        double below = Runs.offGroundShare(Runs.once(high(0).build(), 20, 1));
        assertTrue(aloft > 0.95, () -> "aloft " + aloft);
        assertTrue(below < 0.7, () -> "below " + below);
    }

    /** Three decks near each other, 5 m up; the food on one of them or on the ground beneath. */
    private static Yard high(double foodZ) {
        Yard yard = new Yard();
        for (int i = 0; i < 3; i++) {
            yard.mast("mast-" + i, 8 + 5 * i, 10, 6).deck("deck-" + i, 8 + 5 * i, 10, 5);
        }
        yard.rope("rope-0", 8, 10, 5.5, 13, 10, 5.5).rope("rope-1", 13, 10, 5.5, 18, 10, 5.5);
        return yard.on("nest", ResourceKind.NEST, "deck-0", 8.5, 10, 5, 2)
                .on("drinker", ResourceKind.WATER, "deck-1", 13.5, 10, 5, 1)
                .on("tray", ResourceKind.FOOD, foodZ > 0 ? "deck-2" : "", foodZ > 0 ? 18.5 : 24, 10, foodZ, 2)
                .feed("tray", "08:00", 4000)
                .feed("tray", "13:00", 5000)
                .animal("A", "adult female", 1)
                .animal("B", "juvenile", 2);
    }
}
