package limbway.reports.patterns;

import java.util.function.Consumer;

import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

/**
 * A stretch of waking time of one animal: a stay, or one move of a trip.
 *
 * @param habitat where it lives
 * @param animal number of the animal
 * @param startMs begin [ms since midnight of day 1]
 * @param seconds length [s]
 * @param fromHold hold at its begin
 * @param toHold hold at its end
 * @param move number of the move, or -1 while it stays
 * @param resource number of the resource of a stay, or of the one it goes to
 * @param motive what for
 * @param eatenJ food taken in a stay [J]
 */
record Piece(
        Habitat habitat,
        int animal,
        double startMs,
        double seconds,
        int fromHold,
        int toHold,
        int move,
        int resource,
        Motive motive,
        double eatenJ) {

    private static final double DAY_MS = 86_400_000;
    private static final double HOUR_MS = 3_600_000;

    /** Visits all waking time of a replication. */
    static void visit(Habitat habitat, Journal journal, Consumer<Piece> visitor) {
        for (Stay stay : journal.stays()) {
            if (stay.motive() != Motive.NIGHT) {
                visitor.accept(new Piece(
                        habitat,
                        stay.animal(),
                        stay.startMs(),
                        (stay.endMs() - stay.startMs()) / 1000.0,
                        stay.hold(),
                        stay.hold(),
                        -1,
                        stay.resource(),
                        stay.motive(),
                        stay.eatenJ()));
            }
        }
        RouteGraph graph = habitat.graph();
        for (Trip trip : journal.trips()) {
            MoveCosts costs =
                    habitat.routes(habitat.animals().get(trip.animal()).body()).costs();
            double atMs = trip.startMs();
            for (int move : trip.way().moves()) {
                double seconds = costs.seconds(move);
                visitor.accept(new Piece(
                        habitat,
                        trip.animal(),
                        atMs,
                        seconds,
                        graph.from(move),
                        graph.to(move),
                        move,
                        trip.toResource(),
                        trip.motive(),
                        0));
                atMs += seconds * 1000;
            }
        }
    }

    boolean travels() {
        return move >= 0;
    }

    String body() {
        return habitat.animals().get(animal).body().name();
    }

    double heightM() {
        RouteGraph graph = habitat.graph();
        return (graph.heightAboveGroundM(fromHold) + graph.heightAboveGroundM(toHold)) / 2;
    }

    /** Both ends on the ground: the first centimetre. */
    boolean isOnGround() {
        return heightM() <= 0.01;
    }

    double hour() {
        return startMs % DAY_MS / HOUR_MS;
    }

    boolean isBetween(double fromHour, double toHour) {
        return fromHour <= hour() && hour() < toHour;
    }
}
