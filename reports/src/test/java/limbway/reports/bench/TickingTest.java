package limbway.reports.bench;

import java.time.LocalDate;

import org.junit.jupiter.api.Test;

import limbway.sim.animal.DaySettings;
import limbway.sim.experiment.Experiment;
import limbway.sim.experiment.RunSettings;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Reserve;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** What {@link DayBenchmark} compares does the same work: a clock that ticks leads to the same days but for the ticks. */
class TickingTest {

    private static final int DAYS = 40;

    private final Habitat yard = DayBenchmark.yard();

    private Journal byEvents() {
        RunSettings settings = new RunSettings(3, 1, DAYS, LocalDate.of(2025, 3, 1), 1, 0);
        return Experiment.run(yard, settings, DaySettings.standard(), (done, total) -> {})
                .journals()
                .get(0);
    }

    private static double eatenJ(Journal journal) {
        return journal.reserves().stream().mapToDouble(Reserve::eatenJ).sum();
    }

    private static double movedJ(Journal journal) {
        return journal.reserves().stream().mapToDouble(Reserve::movedJ).sum();
    }

    @Test
    void energiesAndTripsAgree() {
        Journal events = byEvents();
        for (boolean keepsNeeds : new boolean[] {true, false}) {
            Journal ticks = DayBenchmark.ticking(yard, DAYS, 3, keepsNeeds);
            // a stay or trip of twenty minutes becomes half a second longer, and single choices then fall otherwise
            assertEquals(1, eatenJ(ticks) / eatenJ(events), 0.02, "eaten");
            assertEquals(1, movedJ(ticks) / movedJ(events), 0.05, "moved");
            assertEquals(1, (double) ticks.trips().size() / events.trips().size(), 0.04, "trips");
            assertEquals(1, (double) ticks.stays().size() / events.stays().size(), 0.04, "stays");
        }
    }
}
