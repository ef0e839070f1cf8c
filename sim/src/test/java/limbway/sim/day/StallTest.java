package limbway.sim.day;

import java.util.List;

import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Stay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** A place never serves more animals at once than it has stalls. */
class StallTest {

    /** Five hungry animals, one feeder for one, one drinker for one, and a nest each. */
    static Habitat crowded() {
        Yard yard = new Yard();
        for (int i = 0; i < 5; i++) {
            yard.at("nest-" + i, ResourceKind.NEST, 4 + 5 * i, 15, 0, 1);
            yard.animal("animal-" + i, "adult female", i + 1);
        }
        return yard.at("hatch", ResourceKind.FOOD, 15, 5, 0, 1)
                .at("drinker", ResourceKind.WATER, 20, 5, 0, 1)
                .feed("hatch", "08:00", 15_000)
                .feed("hatch", "14:00", 15_000)
                .build();
    }

    @Test
    void oneStallIsNeverUsedByTwo() {
        Habitat habitat = crowded();
        Journal journal = Runs.once(habitat, 10, 5);
        List<Resource> resources = habitat.graph().resources();
        assertEquals(List.of(), overfull(journal.stays(), resources));
        assertTrue(journal.stays().stream().anyMatch(Stay::waiting), "they do get in each other's way");
        assertEquals(
                List.of(),
                overfull(
                        Runs.once(Yard.furnished().build(), 10, 5).stays(),
                        Yard.furnished().build().graph().resources()));
    }

    @Test
    void twoInOneStallWouldBeFound() {
        Habitat habitat = crowded();
        Stay first = new Stay(1, 0, 1000, 5000, 5, 0, Motive.HUNGER, false, 1, 0);
        Stay second = new Stay(1, 1, 4999, 6000, 5, 0, Motive.HUNGER, false, 1, 0);
        Stay waiting = new Stay(1, 2, 4000, 6000, 5, 0, Motive.HUNGER, true, 0, 0);
        List<Resource> resources = habitat.graph().resources();
        assertEquals(List.of(second), overfull(List.of(first, second, waiting), resources));
        assertEquals(List.of(), overfull(List.of(first, waiting), resources));
    }

    @Test
    void whoIsRefusedWaitsNoLongerThanItKeepsAway() {
        // 15 minutes is the default
        assertTrue(Runs.once(crowded(), 10, 5).stays().stream()
                .filter(Stay::waiting)
                .allMatch(stay -> stay.endMs() - stay.startMs() <= 15 * 60_000));
    }

    /** The first stay that begins while all stalls of its place are taken. */
    private static List<Stay> overfull(List<Stay> stays, List<Resource> resources) {
        List<Stay> using = stays.stream()
                .filter(stay -> !stay.waiting()
                        && usesStall(stay, resources.get(stay.resource()).kind()))
                .toList();
        for (Stay stay : using) {
            long others = using.stream()
                    .filter(other -> !other.equals(stay)
                            && other.resource() == stay.resource()
                            && other.startMs() <= stay.startMs()
                            && stay.startMs() < other.endMs())
                    .count();
            if (others >= resources.get(stay.resource()).stalls()) {
                return List.of(stay);
            }
        }
        return List.of();
    }

    private static boolean usesStall(Stay stay, ResourceKind kind) {
        return stay.motive() == Motive.HUNGER || stay.motive() == Motive.THIRST || kind.isRestingPlace();
    }
}
