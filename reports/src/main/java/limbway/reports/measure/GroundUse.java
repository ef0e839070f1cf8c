package limbway.reports.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.body.Body;
import limbway.model.explain.GroundReasons;
import limbway.model.graph.RouteGraph;
import limbway.model.route.Search;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.statistics.Interval;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Trip;

/** Collects where the ground is used: pairs of resources by metres on the ground a day. */
final class GroundUse {

    private record Pair(Body body, int from, int to) {}

    private static final class Tally {
        private final Map<Motive, Integer> motives = new EnumMap<>(Motive.class);
        private final Map<Search.Reached, Double> groundMByWays = new LinkedHashMap<>();
        private final double[] groundM;
        private int trips;
        private int groundTrips;

        Tally(int replications) {
            groundM = new double[replications];
        }

        void add(int replication, Trip trip) {
            double onGroundM = trip.way().lengthM() - trip.way().offGroundM();
            trips++;
            if (trip.way().usesGround()) {
                groundTrips++;
                motives.merge(trip.motive(), 1, Integer::sum);
                groundMByWays.merge(trip.ways(), onGroundM, Double::sum);
                groundM[replication] += onGroundM;
            }
        }
    }

    private final Outcome outcome;
    private final Map<Pair, Tally> tallies = new LinkedHashMap<>();

    private GroundUse(Outcome outcome) {
        this.outcome = outcome;
    }

    /** Pairs between which somebody was on the ground, most metres first. */
    static List<PairUse> of(Outcome outcome) {
        return new GroundUse(outcome).collect();
    }

    private List<PairUse> collect() {
        int replications = outcome.journals().size();
        for (int r = 0; r < replications; r++) {
            Journal journal = outcome.journals().get(r);
            for (Trip trip : journal.trips()) {
                Body body = outcome.habitat().animals().get(trip.animal()).body();
                Pair pair = new Pair(body, trip.fromResource(), trip.toResource());
                tallies.computeIfAbsent(pair, k -> new Tally(replications)).add(r, trip);
            }
        }
        Map<Body, GroundReasons> reasons = new LinkedHashMap<>();
        List<PairUse> uses = new ArrayList<>();
        tallies.forEach((pair, tally) -> {
            if (tally.groundTrips > 0) {
                GroundReasons ofBody = reasons.computeIfAbsent(
                        pair.body,
                        body -> new GroundReasons(
                                outcome.habitat().layout().enclosure(),
                                outcome.habitat().routes(body)));
                uses.add(use(pair, tally, ofBody));
            }
        });
        uses.sort(
                Comparator.<PairUse>comparingDouble(use -> -use.groundMPerDay().mean())
                        .thenComparing(use -> use.body().name())
                        .thenComparing(PairUse::from)
                        .thenComparing(PairUse::to));
        return uses;
    }

    private PairUse use(Pair pair, Tally tally, GroundReasons reasons) {
        int days = outcome.settings().days();
        List<Double> perDay = new ArrayList<>();
        for (double metres : tally.groundM) {
            perDay.add(metres / days);
        }
        Search.Reached ways = mostUsed(tally.groundMByWays);
        RouteGraph graph = outcome.habitat().graph();
        double runDays = (double) outcome.journals().size() * days;
        return new PairUse(
                pair.body,
                graph.resources().get(pair.from).id(),
                graph.resources().get(pair.to).id(),
                byCount(tally.motives),
                tally.trips / runDays,
                tally.groundTrips / runDays,
                Interval.of(perDay).orElseThrow(),
                ways,
                reasons.of(pair.from, pair.to, ways));
    }

    private static Search.Reached mostUsed(Map<Search.Reached, Double> groundMByWays) {
        Map.Entry<Search.Reached, Double> most = null;
        for (Map.Entry<Search.Reached, Double> entry : groundMByWays.entrySet()) {
            if (most == null || entry.getValue() > most.getValue()) {
                most = entry;
            }
        }
        return most.getKey();
    }

    private static List<Motive> byCount(Map<Motive, Integer> counts) {
        List<Motive> motives = new ArrayList<>(counts.keySet());
        motives.sort(Comparator.comparingInt((Motive motive) -> -counts.get(motive)));
        return motives;
    }
}
