package limbway.reports.patterns;

import java.util.ArrayList;
import java.util.List;

import limbway.model.geometry.Point;
import limbway.model.graph.RouteGraph;
import limbway.sim.experiment.Outcome;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

/** Length of the path of a day, and the distance between the beds at its ends. */
final class DayPath {

    private DayPath() {}

    /** Mean distance in plan from one bed to the next, over the mean path of those days. */
    static Measurement netOverPath(Run run) {
        return lives -> {
            Outcome outcome = lives.outcome(run);
            RouteGraph graph = outcome.habitat().graph();
            List<Double> found = new ArrayList<>();
            for (Journal journal : outcome.journals()) {
                double netM = 0;
                double pathM = 0;
                for (int animal = 0; animal < outcome.habitat().animals().size(); animal++) {
                    List<Stay> beds = beds(journal, animal);
                    for (int night = 1; night < beds.size(); night++) {
                        Stay before = beds.get(night - 1);
                        Stay after = beds.get(night);
                        netM += distanceM(graph.place(before.hold()), graph.place(after.hold()));
                        pathM += pathM(journal, animal, before.startMs(), after.startMs());
                    }
                }
                if (pathM > 0) {
                    found.add(netM / pathM);
                }
            }
            return found;
        };
    }

    private static List<Stay> beds(Journal journal, int animal) {
        return Sleep.nights(journal).stream()
                .filter(stay -> stay.animal() == animal)
                .toList();
    }

    private static double pathM(Journal journal, int animal, long fromMs, long toMs) {
        double metres = 0;
        for (Trip trip : journal.trips()) {
            if (trip.animal() == animal && trip.startMs() >= fromMs && trip.startMs() < toMs) {
                metres += trip.way().lengthM();
            }
        }
        return metres;
    }

    private static double distanceM(Point a, Point b) {
        return Math.hypot(a.xM() - b.xM(), a.yM() - b.yM());
    }
}
