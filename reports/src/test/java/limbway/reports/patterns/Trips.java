package limbway.reports.patterns;

import java.util.ArrayList;
import java.util.List;

import limbway.sim.experiment.Outcome;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Trip;

/** Shares of travel. */
final class Trips {

    private Trips() {}

    /** Share of the length of all trips that is off the ground. */
    static Measurement offGround(Run run) {
        return lives -> {
            Outcome outcome = lives.outcome(run);
            List<Double> found = new ArrayList<>();
            for (Journal journal : outcome.journals()) {
                double all = 0;
                double off = 0;
                for (Trip trip : journal.trips()) {
                    all += trip.way().lengthM();
                    off += trip.way().offGroundM();
                }
                if (all > 0) {
                    found.add(off / all);
                }
            }
            return found;
        };
    }
}
