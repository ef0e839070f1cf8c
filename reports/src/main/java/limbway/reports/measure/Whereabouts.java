package limbway.reports.measure;

import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.Way;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

/** Reads a journal as times spent between two heights above the ground; sleep at night is left out. */
final class Whereabouts {

    /** Receives one stretch of waking time in which the height changes evenly. */
    @FunctionalInterface
    interface Stretch {
        void accept(double seconds, double fromM, double toM);
    }

    private Whereabouts() {}

    static void visit(Habitat habitat, Journal journal, Stretch visitor) {
        RouteGraph graph = habitat.graph();
        for (Stay stay : journal.stays()) {
            if (stay.motive() != Motive.NIGHT) {
                double heightM = graph.heightAboveGroundM(stay.hold());
                visitor.accept((stay.endMs() - stay.startMs()) / 1000.0, heightM, heightM);
            }
        }
        for (Trip trip : journal.trips()) {
            MoveCosts costs =
                    habitat.routes(habitat.animals().get(trip.animal()).body()).costs();
            Way way = trip.way();
            for (int move : way.moves()) {
                visitor.accept(
                        costs.seconds(move),
                        graph.heightAboveGroundM(graph.from(move)),
                        graph.heightAboveGroundM(graph.to(move)));
            }
        }
    }

    /** Share of a stretch spent above a height. */
    static double shareAbove(double heightM, double fromM, double toM) {
        if (fromM == toM) {
            return fromM > heightM ? 1 : 0;
        }
        double high = Math.max(fromM, toM);
        double low = Math.min(fromM, toM);
        return Math.max(0, Math.min(1, (high - heightM) / (high - low)));
    }
}
