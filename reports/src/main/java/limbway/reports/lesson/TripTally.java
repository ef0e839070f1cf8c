package limbway.reports.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.body.Body;
import limbway.model.graph.RouteGraph;
import limbway.sim.experiment.Outcome;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Trip;

/**
 * How often the animals of one body went from one place to another in a run.
 *
 * @param body who travels
 * @param from name of the place where the trips start
 * @param to name of the place where they end
 * @param tripsPerDay trips a day, all animals of that body together
 * @param groundTripsPerDay those of them that made a move on the ground
 * @param groundMPerDay metres on the ground a day
 * @param motives why, most frequent first
 */
record TripTally(
        Body body,
        String from,
        String to,
        double tripsPerDay,
        double groundTripsPerDay,
        double groundMPerDay,
        List<Motive> motives) {

    TripTally {
        motives = List.copyOf(motives);
    }

    private record Pair(Body body, int from, int to) {}

    private static final class Sum {
        private final Map<Motive, Integer> motives = new EnumMap<>(Motive.class);
        private int trips;
        private int groundTrips;
        private double groundM;

        void add(Trip trip) {
            trips++;
            motives.merge(trip.motive(), 1, Integer::sum);
            if (trip.way().usesGround()) {
                groundTrips++;
                groundM += trip.way().lengthM() - trip.way().offGroundM();
            }
        }
    }

    /** Every pair of places that somebody went between, most metres on the ground first, then most trips. */
    static List<TripTally> of(Outcome outcome) {
        Map<Pair, Sum> sums = new LinkedHashMap<>();
        for (Journal journal : outcome.journals()) {
            for (Trip trip : journal.trips()) {
                Body body = outcome.habitat().animals().get(trip.animal()).body();
                Pair pair = new Pair(body, trip.fromResource(), trip.toResource());
                sums.computeIfAbsent(pair, k -> new Sum()).add(trip);
            }
        }
        RouteGraph graph = outcome.habitat().graph();
        double days = (double) outcome.journals().size() * outcome.settings().days();
        List<TripTally> tallies = new ArrayList<>();
        sums.forEach((pair, sum) -> tallies.add(new TripTally(
                pair.body,
                graph.resources().get(pair.from).id(),
                graph.resources().get(pair.to).id(),
                sum.trips / days,
                sum.groundTrips / days,
                sum.groundM / days,
                byCount(sum.motives))));
        tallies.sort(Comparator.comparingDouble((TripTally tally) -> -tally.groundMPerDay)
                .thenComparingDouble(tally -> -tally.tripsPerDay)
                .thenComparing(tally -> tally.body.name())
                .thenComparing(TripTally::from)
                .thenComparing(TripTally::to));
        return tallies;
    }

    private static List<Motive> byCount(Map<Motive, Integer> counts) {
        List<Motive> motives = new ArrayList<>(counts.keySet());
        motives.sort(Comparator.comparingInt((Motive motive) -> -counts.get(motive)));
        return motives;
    }
}
