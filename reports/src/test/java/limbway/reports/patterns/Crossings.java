package limbway.reports.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

import limbway.model.body.LocomotorMode;
import limbway.model.graph.RouteGraph;
import limbway.sim.experiment.Outcome;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Trip;

/** Widths in plan of the gaps that are crossed from support to support. */
final class Crossings {

    /** Below this a hand reaches over without anybody calling it a gap; the narrowest class published begins there. */
    private static final double NARROWEST_M = 0.1;

    private static final double CLASS_M = 0.5;

    private Crossings() {}

    /** Share of crossings between two widths. */
    static Measurement share(Run run, String body, double fromM, double toM) {
        return figure(
                run,
                body,
                gaps -> (double) gaps.stream()
                                .filter(gap -> gap >= fromM && gap <= toM)
                                .count()
                        / gaps.size());
    }

    /** Widest crossing [m]. */
    static Measurement widest(Run run, String body) {
        return figure(run, body, gaps -> gaps.stream().mapToDouble(g -> g).max().orElseThrow());
    }

    /** Middle of the class of half a metre with most crossings [m]. */
    static Measurement mode(Run run, String body) {
        return figure(run, body, Crossings::mode);
    }

    private static double mode(List<Double> gaps) {
        int[] counts = new int[100];
        int most = 0;
        for (double gap : gaps) {
            int bin = (int) (gap / CLASS_M);
            counts[bin]++;
            if (counts[bin] > counts[most]) {
                most = bin;
            }
        }
        return (most + 0.5) * CLASS_M;
    }

    private static Measurement figure(Run run, String body, ToDoubleFunction<List<Double>> figure) {
        return lives -> {
            Outcome outcome = lives.outcome(run);
            List<Double> found = new ArrayList<>();
            for (Journal journal : outcome.journals()) {
                List<Double> gaps = gaps(outcome, journal, body);
                if (!gaps.isEmpty()) {
                    found.add(figure.applyAsDouble(gaps));
                }
            }
            return found;
        };
    }

    private static List<Double> gaps(Outcome outcome, Journal journal, String body) {
        RouteGraph graph = outcome.habitat().graph();
        List<Double> gaps = new ArrayList<>();
        for (Trip trip : journal.trips()) {
            if (outcome.habitat().animals().get(trip.animal()).body().name().equals(body)) {
                for (int move : trip.way().moves()) {
                    double gapM = Math.min(graph.gapM(move), inPlanM(graph, move));
                    if (crosses(graph.mode(move)) && gapM >= NARROWEST_M) {
                        gaps.add(gapM);
                    }
                }
            }
        }
        return gaps;
    }

    private static double inPlanM(RouteGraph graph, int move) {
        return graph.place(graph.from(move)).planDistanceM(graph.place(graph.to(move)));
    }

    private static boolean crosses(LocomotorMode mode) {
        return mode == LocomotorMode.BRIDGE || mode == LocomotorMode.SWAY || mode == LocomotorMode.LEAP;
    }
}
