package limbway.sim.food;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;

class FoodMemoryTest {

    private static final long DAY_MS = 86_400_000;
    private static final double ORDINARY_J = 400;

    private final FoodMemory memory = new FoodMemory(new double[] {ORDINARY_J, 0}, 0.5, DAY_MS);

    @Test
    @Tag("derived")
    void whatWasHeardFadesTowardsTheOrdinaryMoment() {
        memory.hear(0, 1000, 0);
        assertEquals(1000, memory.expectedJ(0, 0));
        assertEquals(400 + 600 * Math.exp(-0.5), memory.expectedJ(0, DAY_MS / 2), 1e-9);
        assertEquals(400 + 600 * Math.exp(-1), memory.expectedJ(0, DAY_MS), 1e-9);
    }

    /** 1000 J heard, 200 J left at the end of the visit: half of the difference is learned, however often it looked. */
    @Test
    @Tag("derived")
    void aVisitCountsOnceByWhatIsSeenLast() {
        memory.hear(0, 1000, 0);
        memory.see(0, 600, 0);
        memory.see(0, 400, 0);
        memory.see(0, 200, 0);
        assertEquals(200, memory.expectedJ(0, 0), "where it is, it sees what is there");
        memory.leave();
        assertEquals(600, memory.expectedJ(0, 0), 1e-12);
    }

    @Test
    @Tag("derived")
    void anEmptyPlaceIsRememberedAsEmptyUntilItIsForgotten() {
        memory.hear(0, 1000, 0);
        memory.see(0, 0, 0);
        memory.leave();
        assertEquals(0, memory.expectedJ(0, 0));
        assertEquals(400 * (1 - Math.exp(-0.25)), memory.expectedJ(0, DAY_MS / 4), 1e-9);
    }

    @Test
    void aPoorPlaceIsWorthNothingForAWhileAndThenUntilNews() {
        memory.hear(0, 1000, 0);
        memory.findPoor(0, 100);
        assertEquals(0, memory.expectedJ(0, 99));
        // a tenth of a second of fading takes less than a thousandth of a joule
        assertEquals(1000, memory.expectedJ(0, 100), 1e-3);
        memory.findPoor(0, 200);
        assertEquals(0, memory.expectedJ(0, 100 * DAY_MS));
        memory.hear(0, 700, 101 * DAY_MS);
        assertEquals(700, memory.expectedJ(0, 101 * DAY_MS));
    }

    @Test
    void whatIsPutOutWhileItIsThereIsSeen() {
        memory.see(0, 100, 0);
        memory.hear(0, 1000, 5);
        assertEquals(1100, memory.expectedJ(0, 5));
        memory.leave();
        assertEquals(1000, memory.expectedJ(0, 5));
    }

    @Test
    void wherePlacesAreNeverFedNothingIsExpected() {
        assertEquals(0, memory.expectedJ(1, 10 * DAY_MS));
    }
}
