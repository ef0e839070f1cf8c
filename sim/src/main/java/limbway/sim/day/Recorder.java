package limbway.sim.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import limbway.sim.journal.Displacement;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Reserve;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Stock;
import limbway.sim.journal.Trip;

/** Takes down what happens. */
final class Recorder {

    private final List<Trip> trips = new ArrayList<>();
    private final List<Stay> stays = new ArrayList<>();
    private final List<Displacement> displacements = new ArrayList<>();

    void add(Trip trip) {
        trips.add(trip);
    }

    void add(Stay stay) {
        stays.add(stay);
    }

    /** Displacements come in order of time; those of one moment in the order in which they happen. */
    void add(Displacement displacement) {
        displacements.add(displacement);
    }

    Journal journal(int replication, List<Reserve> reserves, List<Stock> stocks) {
        trips.sort(Comparator.comparingLong(Trip::startMs).thenComparingInt(Trip::animal));
        stays.sort(Comparator.comparingLong(Stay::startMs).thenComparingInt(Stay::animal));
        return new Journal(replication, trips, stays, reserves, stocks, displacements);
    }
}
