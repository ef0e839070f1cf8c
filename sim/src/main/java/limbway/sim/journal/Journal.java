package limbway.sim.journal;

import java.util.List;

/**
 * All that happened in one replication, in order of time.
 *
 * @param replication number of the replication, from 1
 * @param trips trips in order of their start; animals by number where two start together
 * @param stays stays likewise
 * @param reserves energy account of each animal, by number
 * @param stocks account of each food place, by number of the resource
 * @param displacements who drove whom from a stall, in order of time
 */
public record Journal(
        int replication,
        List<Trip> trips,
        List<Stay> stays,
        List<Reserve> reserves,
        List<Stock> stocks,
        List<Displacement> displacements) {

    /** Keeps copies of the lists. */
    public Journal {
        trips = List.copyOf(trips);
        stays = List.copyOf(stays);
        reserves = List.copyOf(reserves);
        stocks = List.copyOf(stocks);
        displacements = List.copyOf(displacements);
    }

    /**
     * A journal of animals that all gave each other room.
     *
     * @param replication number of the replication, from 1
     * @param trips trips in order of their start
     * @param stays stays likewise
     * @param reserves energy account of each animal
     * @param stocks account of each food place
     */
    public Journal(int replication, List<Trip> trips, List<Stay> stays, List<Reserve> reserves, List<Stock> stocks) {
        this(replication, trips, stays, reserves, stocks, List.of());
    }
}
