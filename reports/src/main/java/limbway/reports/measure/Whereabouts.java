package limbway.reports.measure;

import limbway.model.graph.RouteGraph;
import limbway.model.route.Way;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

/** Reads a journal as times spent between two heights; sleep at night is left out. */
final class Whereabouts {

    /** Receives one stretch of waking time in which the height changes evenly. */
    @FunctionalInterface
    interface Stretch {
        void accept(double seconds, double fromZM, double toZM);
    }

    private Whereabouts() {}

    static void visit(Habitat habitat, Journal journal, Stretch visitor) {
        RouteGraph graph = habitat.graph();
        for (Stay stay : journal.stays()) {
            if (stay.motive() != Motive.NIGHT) {
                double zM = graph.place(stay.hold()).zM();
                visitor.accept((stay.endMs() - stay.startMs()) / 1000.0, zM, zM);
            }
        }
        for (Trip trip : journal.trips()) {
            var speeds = habitat.animals().get(trip.animal()).body().speeds();
            Way way = trip.way();
            for (int move : way.moves()) {
                double seconds = graph.lengthM(move) / speeds.inMode(graph.mode(move));
                visitor.accept(
                        seconds,
                        graph.place(graph.from(move)).zM(),
                        graph.place(graph.to(move)).zM());
            }
        }
    }

    /** Share of a stretch spent above a height. */
    static double shareAbove(double zM, double fromZM, double toZM) {
        if (fromZM == toZM) {
            return fromZM > zM ? 1 : 0;
        }
        double high = Math.max(fromZM, toZM);
        double low = Math.min(fromZM, toZM);
        return Math.max(0, Math.min(1, (high - zM) / (high - low)));
    }
}
