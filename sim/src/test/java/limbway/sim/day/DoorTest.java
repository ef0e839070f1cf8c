package limbway.sim.day;

import java.time.LocalTime;
import java.util.List;

import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Bounds;
import limbway.model.enclosure.Door;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.OpenHours;
import limbway.model.enclosure.ResourceKind;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Ledger;
import limbway.sim.journal.Trip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** A wall parts the yard, nests on one side and food on the other; its door is open from eight to four. */
class DoorTest {

    private static final int OPENS_S = 8 * 3600;
    private static final int SHUTS_S = 16 * 3600;

    @Test
    void nobodySetsOutThroughAShutDoorAndSomebodyGoesThroughTheOpenOne() {
        Habitat habitat = parted(List.of(new OpenHours(LocalTime.of(8, 0), LocalTime.of(16, 0))));
        Journal journal = Runs.once(habitat, 4, 1);
        Ledger.check(journal);
        int through = 0;
        for (Trip trip : journal.trips()) {
            boolean passes =
                    trip.way().moves().stream().anyMatch(move -> habitat.graph().door(move) >= 0);
            long second = trip.startMs() / 1000 % 86_400;
            assertTrue(!passes || (second >= OPENS_S && second < SHUTS_S), "a trip set out at " + second + " s");
            through += passes ? 1 : 0;
        }
        assertTrue(through >= 8, through + " trips through the door in four days");
    }

    @Test
    void behindADoorThatStaysShutNobodyEats() {
        Journal journal = Runs.once(parted(List.of()), 2, 1);
        Ledger.check(journal);
        assertEquals(
                0,
                journal.reserves().stream()
                        .mapToDouble(reserve -> reserve.eatenJ())
                        .sum());
    }

    private static Habitat parted(List<OpenHours> open) {
        Yard yard = new Yard();
        yard.deck("deck", 4, 4, 0.6);
        yard.on("nest", ResourceKind.NEST, "deck", 4, 4, 0.6, 2);
        yard.at("trough", ResourceKind.WATER, 6, 12, 0, 2);
        yard.at("hatch", ResourceKind.FOOD, 26, 10, 0, 2);
        yard.animal("A", "adult female", 1);
        yard.animal("B", "juvenile", 2);
        yard.feed("hatch", "07:00", 9000).feed("hatch", "13:00", 9000);
        Enclosure whole = yard.build().layout().enclosure();
        Barrier wall = new Barrier("wall", BarrierKind.WALL, Outline.rectangle(15, 0, 15.2, 20), 0, 4);
        Door door = new Door("slide", "wall", new Segment(new Point(15.1, 9, 0), new Point(15.1, 10, 0)), 1.2, open);
        return yard.build(whole.withBounds(new Bounds(List.of(wall), List.of(), List.of(door))));
    }
}
