package limbway.model.explain.flip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntUnaryOperator;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportScale;
import limbway.model.geometry.Point;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ReverseTree;

/** Places on one support or deck to which a rope could be tied, each with what it costs to come there, or to go on. */
final class Anchors {

    /** Places along a support are so far apart [m], or farther where there would be too many. */
    private static final double STEP_M = 0.02;

    private static final int MOST = 400;

    /** A place with a cost. */
    record Anchor(Spot spot, Point point, double milliJ) {}

    private record Known(double alongM, double milliJ) {}

    private Anchors() {}

    /** Anchors on what has a name; between two holds the cost is taken in proportion. */
    static List<Anchor> on(
            Enclosure enclosure, String id, List<Integer> holds, RouteGraph graph, IntUnaryOperator milliJ) {
        List<Anchor> anchors = new ArrayList<>();
        Support support = Things.support(enclosure, id).orElse(null);
        if (support == null) {
            for (int hold : holds) {
                if (milliJ.applyAsInt(hold) != ReverseTree.UNREACHABLE) {
                    Spot.near(enclosure, id, graph.place(hold))
                            .ifPresent(spot -> add(enclosure, spot, milliJ.applyAsInt(hold), anchors));
                }
            }
            return anchors;
        }
        SupportScale scale = new SupportScale(support, enclosure.ground().terrain());
        List<Known> known = new ArrayList<>();
        for (int hold : holds) {
            if (milliJ.applyAsInt(hold) != ReverseTree.UNREACHABLE) {
                known.add(new Known(scale.measureM(graph.place(hold)), milliJ.applyAsInt(hold)));
            }
        }
        known.sort(Comparator.comparingDouble(Known::alongM));
        double stepM = known.isEmpty()
                ? STEP_M
                : Math.max(
                        STEP_M,
                        Math.ceil(100 * (known.get(known.size() - 1).alongM - known.get(0).alongM) / MOST) / 100);
        for (int i = 0; i + 1 < known.size(); i++) {
            between(enclosure, support, known.get(i), known.get(i + 1), stepM, anchors);
        }
        return anchors;
    }

    private static void between(
            Enclosure enclosure, Support support, Known low, Known high, double stepM, List<Anchor> anchors) {
        double spanM = high.alongM - low.alongM;
        if (spanM <= 0) {
            return;
        }
        for (double k = Math.ceil(low.alongM / stepM); k * stepM < high.alongM; k++) {
            double alongM = Steps.centimetre(k * stepM);
            double milliJ = low.milliJ + (high.milliJ - low.milliJ) * (alongM - low.alongM) / spanM;
            add(enclosure, Spot.at(support, alongM), milliJ, anchors);
        }
    }

    private static void add(Enclosure enclosure, Spot spot, double milliJ, List<Anchor> anchors) {
        spot.in(enclosure).ifPresent(point -> anchors.add(new Anchor(spot, point, milliJ)));
    }
}
