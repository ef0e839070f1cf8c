package limbway.reports.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.graph.RouteGraph;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.statistics.Interval;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Trip;

/**
 * Metres on the ground between two resources, all animals together.
 *
 * @param from name of the resource where the trips start
 * @param to name of the resource where they end
 * @param groundMPerDay metres on the ground a day
 */
public record PairTotal(String from, String to, Interval groundMPerDay) {

    private record Pair(int from, int to) {}

    /**
     * Adds up the metres of each pair.
     *
     * @param outcome a run with at least one finished replication
     * @return pairs between which somebody was on the ground, most metres first
     */
    public static List<PairTotal> of(Outcome outcome) {
        int replications = outcome.journals().size();
        Map<Pair, double[]> metres = new LinkedHashMap<>();
        for (int r = 0; r < replications; r++) {
            Journal journal = outcome.journals().get(r);
            for (Trip trip : journal.trips()) {
                if (trip.way().usesGround()) {
                    Pair pair = new Pair(trip.fromResource(), trip.toResource());
                    metres.computeIfAbsent(pair, k -> new double[replications])[r] +=
                            trip.way().lengthM() - trip.way().offGroundM();
                }
            }
        }
        RouteGraph graph = outcome.habitat().graph();
        List<PairTotal> totals = new ArrayList<>();
        metres.forEach((pair, byReplication) -> {
            List<Double> perDay = new ArrayList<>();
            for (double sum : byReplication) {
                perDay.add(sum / outcome.settings().days());
            }
            totals.add(new PairTotal(
                    graph.resources().get(pair.from).id(),
                    graph.resources().get(pair.to).id(),
                    Interval.of(perDay).orElseThrow()));
        });
        totals.sort(Comparator.<PairTotal>comparingDouble(
                        total -> -total.groundMPerDay().mean())
                .thenComparing(PairTotal::from)
                .thenComparing(PairTotal::to));
        return totals;
    }
}
