package limbway.sim;

import java.time.LocalDate;
import java.util.List;

import limbway.sim.animal.DaySettings;
import limbway.sim.day.AccountAudit;
import limbway.sim.experiment.Experiment;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.RunSettings;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

/** Runs for tests, always under the strict audit. */
public final class Runs {

    /** Day 1 of all test runs: near an equinox. */
    public static final LocalDate DATE = LocalDate.of(2025, 3, 1);

    private Runs() {}

    /** One replication. */
    public static Journal once(Habitat habitat, int days, int seed) {
        return all(habitat, days, seed, 1, 1).journals().get(0);
    }

    /** Several replications in which nothing counts but needs and energy. */
    public static Outcome all(Habitat habitat, int days, int seed, int replications, int threads) {
        RunSettings settings = new RunSettings(seed, replications, days, DATE, threads);
        return all(habitat, settings, DaySettings.standard().withoutWorth());
    }

    /** Several replications under given settings. */
    public static Outcome all(Habitat habitat, RunSettings settings, DaySettings day) {
        return Experiment.run(habitat, settings, day, (done, total) -> {}, AccountAudit.STRICT);
    }

    /** The trips of the animals before a number. */
    public static List<Trip> tripsOfFirst(Journal journal, int animals) {
        return journal.trips().stream().filter(trip -> trip.animal() < animals).toList();
    }

    /** The stays of the animals before a number. */
    public static List<Stay> staysOfFirst(Journal journal, int animals) {
        return journal.stays().stream().filter(stay -> stay.animal() < animals).toList();
    }

    /** Share of the length of all trips that is off the ground. */
    public static double offGroundShare(Journal journal) {
        double all =
                journal.trips().stream().mapToDouble(t -> t.way().lengthM()).sum();
        double off =
                journal.trips().stream().mapToDouble(t -> t.way().offGroundM()).sum();
        return off / all;
    }

    /** Fails at the first difference, and prints no more than that. */
    public static void assertAlike(List<?> expected, List<?> found) {
        for (int i = 0; i < Math.min(expected.size(), found.size()); i++) {
            if (!expected.get(i).equals(found.get(i))) {
                fail("entry " + i + ": " + brief(expected.get(i)) + " became " + brief(found.get(i)));
            }
        }
        assertEquals(expected.size(), found.size());
    }

    /** Fails at the first difference between two journals. */
    public static void assertAlike(Journal expected, Journal found) {
        assertEquals(expected.replication(), found.replication());
        assertAlike(expected.trips(), found.trips());
        assertAlike(expected.stays(), found.stays());
        assertAlike(expected.reserves(), found.reserves());
        assertAlike(expected.stocks(), found.stocks());
        assertAlike(expected.displacements(), found.displacements());
    }

    private static String brief(Object entry) {
        String text = entry.toString();
        return text.length() < 200 ? text : text.substring(0, 200) + " ...";
    }
}
