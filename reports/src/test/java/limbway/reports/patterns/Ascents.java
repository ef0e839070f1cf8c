package limbway.reports.patterns;

import java.util.ArrayList;
import java.util.List;

import limbway.model.graph.RouteGraph;
import limbway.sim.experiment.Outcome;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Trip;

/** On what inclines animals climb. */
final class Ascents {

    private Ascents() {}

    /** Share of the height gained on moves that lead up less steeply than an angle. */
    static Measurement gentlerThan(Run run, double degrees) {
        return lives -> {
            Outcome outcome = lives.outcome(run);
            RouteGraph graph = outcome.habitat().graph();
            List<Double> found = new ArrayList<>();
            for (Journal journal : outcome.journals()) {
                double gentleM = 0;
                double allM = 0;
                for (Trip trip : journal.trips()) {
                    for (int move : trip.way().moves()) {
                        double riseM = graph.riseM(move);
                        if (riseM > 0) {
                            allM += riseM;
                            double slope = Math.toDegrees(Math.asin(Math.min(1, riseM / graph.lengthM(move))));
                            gentleM += slope < degrees ? riseM : 0;
                        }
                    }
                }
                if (allM > 0) {
                    found.add(gentleM / allM);
                }
            }
            return found;
        };
    }
}
