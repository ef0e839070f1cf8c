package limbway.reports.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.graph.RouteGraph;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.statistics.Interval;
import limbway.sim.journal.Journal;

/**
 * Share of waking time between two heights above the ground.
 *
 * @param fromM lower edge [m]; the lowest band is the ground itself, from 0 to {@link #GROUND_M}
 * @param toM upper edge [m]
 * @param share share of all time not asleep at night, 0 to 1
 */
public record HeightBand(double fromM, double toM, Interval share) {

    /** Up to this height an animal stands on the ground [m]. */
    public static final double GROUND_M = 0.01;

    private static final int MOST_BANDS = 10;

    /**
     * Whether the band is the ground itself.
     *
     * @return true for the lowest band
     */
    public boolean isGround() {
        return fromM == 0 && toM == GROUND_M;
    }

    /**
     * Divides waking time among the ground and bands of whole metres up to the highest hold.
     *
     * @param outcome a run
     * @return bands from below; none if nobody was awake
     */
    public static List<HeightBand> of(Outcome outcome) {
        List<Double> edges = edges(outcome.habitat().graph());
        int bands = edges.size() - 1;
        List<List<Double>> shares = new ArrayList<>();
        for (int b = 0; b < bands; b++) {
            shares.add(new ArrayList<>());
        }
        for (Journal journal : outcome.journals()) {
            double[] above = new double[bands + 1];
            double[] all = new double[1];
            Whereabouts.visit(outcome.habitat(), journal, (seconds, fromZM, toZM) -> {
                all[0] += seconds;
                for (int e = 1; e <= bands; e++) {
                    above[e] += seconds * Whereabouts.shareAbove(edges.get(e), fromZM, toZM);
                }
            });
            above[0] = all[0];
            for (int b = 0; b < bands && all[0] > 0; b++) {
                shares.get(b).add((above[b] - above[b + 1]) / all[0]);
            }
        }
        List<HeightBand> list = new ArrayList<>();
        for (int b = 0; b < bands; b++) {
            Optional<Interval> share = Interval.of(shares.get(b));
            if (share.isPresent()) {
                list.add(new HeightBand(edges.get(b), edges.get(b + 1), share.get()));
            }
        }
        return list;
    }

    private static List<Double> edges(RouteGraph graph) {
        double topM = 1;
        for (int hold = 0; hold < graph.holdCount(); hold++) {
            topM = Math.max(topM, graph.heightAboveGroundM(hold));
        }
        double stepM = Math.ceil(topM / MOST_BANDS);
        List<Double> edges = new ArrayList<>(List.of(0.0, GROUND_M));
        for (double edge = stepM; edge < topM + stepM; edge += stepM) {
            edges.add(edge);
        }
        return edges;
    }
}
