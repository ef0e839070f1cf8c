package limbway.reports.patterns;

import java.util.ArrayList;
import java.util.List;

import limbway.sim.experiment.Outcome;
import limbway.sim.journal.Journal;

/** How many nests are made. */
final class Nests {

    private Nests() {}

    /** Beds for the night that are reached, for each animal and day. */
    static Measurement aDay(Run run) {
        return lives -> {
            Outcome outcome = lives.outcome(run);
            int animalDays =
                    outcome.habitat().animals().size() * outcome.settings().days();
            List<Double> found = new ArrayList<>();
            for (Journal journal : outcome.journals()) {
                found.add((double) Sleep.nights(journal).size() / animalDays);
            }
            return found;
        };
    }
}
