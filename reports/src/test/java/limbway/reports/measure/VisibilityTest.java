package limbway.reports.measure;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.body.LocomotorMode;
import limbway.model.energy.EnergyByPart;
import limbway.model.route.Search;
import limbway.model.route.Way;
import limbway.reports.Pole;
import limbway.sim.experiment.statistics.Interval;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

import static org.junit.jupiter.api.Assertions.assertEquals;

@Tag("derived")
class VisibilityTest {

    private static final long HOUR_MS = 3_600_000;

    private static Stay stay(Habitat habitat, int animal, int fromHour, int toHour, int resource) {
        int hold = habitat.graph().useHolds(resource)[0];
        return new Stay(1, animal, fromHour * HOUR_MS, toHour * HOUR_MS, resource, hold, Motive.FATIGUE, false, 0, 0);
    }

    /** A trip of one hour, from 11 to 12, whose way is nothing but its ends. */
    private static Trip trip(Habitat habitat, int from, int to) {
        Way way = new Way(
                List.of(habitat.graph().useHolds(from)[0], habitat.graph().useHolds(to)[0]),
                List.of(),
                EnergyByPart.of(new long[LocomotorMode.values().length]),
                0,
                10,
                0,
                3600,
                0);
        Search.Reached ways = new Search.Reached(way, Optional.empty(), Optional.of(way), 0);
        return new Trip(1, 0, 11 * HOUR_MS, from, to, Motive.FATIGUE, ways, way);
    }

    /**
     * Ibu is at the water until 11, walks until 12, and is in the den until 16. The terrace, which has visitors from 10 to 14,
     * sees the water and not the den: 1.5 h of 4. The window, from 12 to 16, sees both: 4 h of 4. Visitors are somewhere for
     * 6 h; from 11:30 to 12 nobody sees her; for 4 h she is at the retreat. Anak is on the pole all day, in view of both.
     */
    @Test
    void sharesAreThoseAddedUpByHand() {
        Habitat habitat = new Shown().habitat(List.of(Shown.TERRACE, Shown.WINDOW), List.of());
        Journal journal = new Journal(
                1,
                List.of(trip(habitat, Pole.WATER, Shown.DEN)),
                List.of(
                        stay(habitat, 0, 8, 11, Pole.WATER),
                        stay(habitat, 1, 0, 24, Pole.FOOD),
                        stay(habitat, 0, 12, 16, Shown.DEN),
                        stay(habitat, 0, 16, 24, Pole.WATER)),
                List.of(),
                List.of());
        Visibility visible = Visibility.of(Pole.outcome(habitat, 1, journal)).orElseThrow();
        Visibility.Seen ibu = visible.byAnimal().get("Ibu");
        assertEquals(0.375, ibu.fromViewpoint().get("terrace").mean(), 1e-12);
        assertEquals(1, ibu.fromViewpoint().get("window").mean(), 1e-12);
        assertEquals(5.5 / 6, ibu.fromAny().orElseThrow().mean(), 1e-12);
        assertEquals(0.5 / 6, ibu.outOfSight().orElseThrow().mean(), 1e-12);
        assertEquals(4.0 / 6, ibu.atRetreat().orElseThrow().mean(), 1e-12);
        assertEquals(1, visible.byAnimal().get("Anak").fromAny().orElseThrow().mean(), 1e-12);
        assertEquals(11.5 / 12, visible.overall().fromAny().orElseThrow().mean(), 1e-12);
        assertEquals(5.5 / 8, visible.overall().fromViewpoint().get("terrace").mean(), 1e-12);
        assertEquals(ibu, visible.byBody().get("adult female"));
    }

    @Test
    void aReplicationIsOneValue() {
        Habitat habitat = new Shown().habitat(List.of(Shown.TERRACE), List.of());
        Journal hidden = new Journal(1, List.of(), List.of(stay(habitat, 0, 0, 24, Shown.DEN)), List.of(), List.of());
        Journal shown = new Journal(2, List.of(), List.of(stay(habitat, 0, 0, 24, Pole.WATER)), List.of(), List.of());
        Interval seen = Visibility.of(Pole.outcome(habitat, 1, hidden, shown))
                .orElseThrow()
                .overall()
                .fromAny()
                .orElseThrow();
        assertEquals(2, seen.n());
        assertEquals(0.5, seen.mean(), 1e-12);
    }

    @Test
    void withoutViewpointsNothingIsTold() {
        Habitat habitat = new Shown().habitat(List.of(), List.of());
        Journal journal = new Journal(1, List.of(), List.of(), List.of(), List.of());
        assertEquals(Optional.empty(), Visibility.of(Pole.outcome(habitat, 1, journal)));
    }
}
