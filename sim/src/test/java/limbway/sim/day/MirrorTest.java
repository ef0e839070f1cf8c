package limbway.sim.day;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import limbway.sim.RichDays;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.animal.DaySettings;
import limbway.sim.experiment.RunSettings;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Trip;

import static org.junit.jupiter.api.Assertions.assertTrue;

/** East and west exchanged, the group lives the same days: holds have other numbers, and chance goes by names. */
class MirrorTest {

    /** Where an animal went and why. */
    private record Told(int animal, int from, int to, Motive motive) {

        static Told of(Trip trip) {
            return new Told(trip.animal(), trip.fromResource(), trip.toResource(), trip.motive());
        }
    }

    private static final int RUNS = 40;

    private static List<List<Told>> lived(Habitat habitat) {
        RunSettings settings = new RunSettings(21, RUNS, 1, Runs.DATE, 2);
        return Runs.all(habitat, settings, DaySettings.standard()).journals().stream()
                .map(MirrorTest::told)
                .toList();
    }

    private static List<Told> told(Journal journal) {
        return journal.trips().stream()
                .sorted(Comparator.comparingInt(Trip::animal))
                .map(Told::of)
                .toList();
    }

    private static long same(Habitat one, Habitat other) {
        List<List<Told>> first = lived(one);
        List<List<Told>> second = lived(other);
        return IntStream.range(0, RUNS)
                .filter(i -> first.get(i).equals(second.get(i)))
                .count();
    }

    /**
     * Trip for trip and animal for animal, on most days. Coordinates are no longer the same doubles, so that a way may cost a
     * millijoule more, and holds are numbered from the other side, which counts where two cost the same; a single choice
     * that falls otherwise makes another day. Three quarters is far from what any mistake in one direction would leave.
     */
    @Test
    void inTheMirrorTheGroupGoesTheSameWays() {
        long same = same(Yard.furnished().build(), Yard.furnishedInMirror().build());
        assertTrue(same >= RUNS * 3 / 4, () -> same + " of " + RUNS + " days are the same");
    }

    /** Planted mistake: the window for visitors stays in the west while the yard is turned round. */
    @Test
    void whatIsNotTurnedRoundWithTheYardIsFound() {
        long same = same(
                RichDays.of(Yard.furnished().build()),
                RichDays.of(Yard.furnishedInMirror().build()));
        assertTrue(same < RUNS / 2, () -> same + " of " + RUNS + " days are the same");
    }
}
