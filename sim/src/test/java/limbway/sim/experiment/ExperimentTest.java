package limbway.sim.experiment;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import limbway.sim.RichDays;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.animal.DaySettings;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Stay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

class ExperimentTest {

    private final Habitat habitat = Yard.furnished().build();

    @Test
    void twoThreadsGiveWhatOneGives() {
        List<Journal> one = Runs.all(habitat, 3, 21, 6, 1).journals();
        List<Journal> two = Runs.all(habitat, 3, 21, 6, 2).journals();
        assertEquals(6, two.size());
        for (int i = 0; i < 6; i++) {
            Runs.assertAlike(one.get(i), two.get(i));
        }
        assertEquals(
                List.of(1, 2, 3, 4, 5, 6),
                one.stream().map(Journal::replication).toList());
        assertFalse(one.get(0).trips().equals(one.get(1).trips()));
    }

    /** Contests, queues, closures, two groups, worth of places, days to warm up. */
    @Test
    void twoThreadsGiveWhatOneGivesWhateverHappens() {
        Habitat rich = RichDays.of(habitat);
        DaySettings day = DaySettings.standard();
        List<Journal> one =
                Runs.all(rich, new RunSettings(4, 8, 3, Runs.DATE, 1, 2), day).journals();
        List<Journal> two =
                Runs.all(rich, new RunSettings(4, 8, 3, Runs.DATE, 2, 2), day).journals();
        assertEquals(8, two.size());
        for (int i = 0; i < 8; i++) {
            Runs.assertAlike(one.get(i), two.get(i));
        }
        assertTrue(one.stream().anyMatch(journal -> !journal.displacements().isEmpty()), "contests");
        assertTrue(one.stream().anyMatch(journal -> journal.stays().stream().anyMatch(Stay::waiting)), "queues");
    }

    @Test
    void aReplicationIsTheSameHoweverManyThereAre() {
        Runs.assertAlike(
                Runs.all(habitat, 2, 21, 1, 1).journals().get(0),
                Runs.all(habitat, 2, 21, 3, 1).journals().get(0));
    }

    @Test
    void everyFinishedReplicationIsReported() {
        List<Integer> seen = new ArrayList<>();
        Outcome outcome = Experiment.run(
                habitat,
                new RunSettings(1, 4, 1, Runs.DATE, 2),
                DaySettings.standard().withoutWorth(),
                (done, total) -> seen.add(10 * done + total));
        assertEquals(List.of(14, 24, 34, 44), seen);
        assertTrue(outcome.complete());
    }

    @Test
    void aRunThatIsStoppedKeepsWhatIsFinished() {
        class Impatient implements Progress {
            private boolean enough;

            @Override
            public void finished(int done, int total) {
                enough = true;
            }

            @Override
            public boolean wantsStop() {
                return enough;
            }
        }

        assertPartOf(runLong(new Impatient()));
    }

    @Test
    void aRunThatIsInterruptedKeepsWhatIsFinished() {
        Outcome outcome = runLong((done, total) -> Thread.currentThread().interrupt());
        assertPartOf(outcome);
        assertFalse(Thread.interrupted(), "the interrupt is spent");
    }

    private Outcome runLong(Progress progress) {
        return Experiment.run(
                habitat,
                new RunSettings(1, 5000, 30, Runs.DATE, 2),
                DaySettings.standard().withoutWorth(),
                progress);
    }

    private void assertPartOf(Outcome outcome) {
        assertFalse(outcome.complete());
        assertTrue(outcome.journals().size() >= 1 && outcome.journals().size() < 5000);
        List<Integer> numbers =
                outcome.journals().stream().map(Journal::replication).toList();
        assertEquals(numbers.stream().sorted().toList(), numbers);
        Journal first = outcome.journals().get(0);
        Journal again =
                Runs.all(habitat, 30, 1, first.replication(), 1).journals().get(first.replication() - 1);
        Runs.assertAlike(again, first);
    }

    @Test
    void seedsGiveDifferentDays() {
        List<Integer> trips = IntStream.rangeClosed(1, 5)
                .mapToObj(seed -> Runs.once(habitat, 1, seed).trips().size())
                .toList();
        assertTrue(trips.stream().distinct().count() > 1, trips::toString);
    }
}
