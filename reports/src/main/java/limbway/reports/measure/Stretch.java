package limbway.reports.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.geometry.Point;
import limbway.model.graph.RouteGraph;
import limbway.sim.experiment.Outcome;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Trip;

/**
 * A straight stretch of path and how much it is travelled, both directions together.
 *
 * @param a one end
 * @param b other end
 * @param onGround whether it is on the ground
 * @param timesPerDay passages a day, all animals together
 * @param metresPerDay metres a day
 */
public record Stretch(Point a, Point b, boolean onGround, double timesPerDay, double metresPerDay) {

    private record Ends(int low, int high, boolean onGround) {}

    /**
     * Adds up the moves of all trips.
     *
     * @param outcome a run with at least one finished replication
     * @return stretches in the order they were first travelled
     */
    public static List<Stretch> of(Outcome outcome) {
        RouteGraph graph = outcome.habitat().graph();
        Map<Ends, Integer> passages = new LinkedHashMap<>();
        for (Journal journal : outcome.journals()) {
            for (Trip trip : journal.trips()) {
                for (int move : trip.way().moves()) {
                    int from = graph.from(move);
                    int to = graph.to(move);
                    Ends ends = new Ends(Math.min(from, to), Math.max(from, to), graph.moveOnGround(move));
                    passages.merge(ends, 1, Integer::sum);
                }
            }
        }
        double runDays = (double) outcome.journals().size() * outcome.settings().days();
        List<Stretch> stretches = new ArrayList<>();
        passages.forEach((ends, times) -> {
            Point a = graph.place(ends.low);
            Point b = graph.place(ends.high);
            double perDay = times / runDays;
            stretches.add(new Stretch(a, b, ends.onGround, perDay, perDay * a.distanceM(b)));
        });
        return stretches;
    }
}
