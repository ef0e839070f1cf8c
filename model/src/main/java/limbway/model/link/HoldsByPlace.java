package limbway.model.link;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.geometry.Point;
import limbway.model.graph.RouteGraph;

/** Finds the hold of a graph at a place. */
final class HoldsByPlace {

    /** No hold there. */
    static final int NONE = -1;

    /** Holds closer than this are one; twice what compiling takes for one, for rounding. */
    private static final double SAME_M = 2e-6;

    private static final double CELL_M = 0.01;

    private final RouteGraph graph;
    private final Map<Cell, List<Integer>> cells = new LinkedHashMap<>();

    private record Cell(long x, long y, long z) {}

    HoldsByPlace(RouteGraph graph) {
        this.graph = graph;
        for (int hold = 0; hold < graph.holdCount(); hold++) {
            Point p = graph.place(hold);
            cells.computeIfAbsent(new Cell(cell(p.xM()), cell(p.yM()), cell(p.zM())), k -> new ArrayList<>(2))
                    .add(hold);
        }
    }

    /** The nearest hold that is the same place, or {@link #NONE}. */
    int at(Point p) {
        int best = NONE;
        double bestM = SAME_M;
        for (long x = cell(p.xM() - SAME_M); x <= cell(p.xM() + SAME_M); x++) {
            for (long y = cell(p.yM() - SAME_M); y <= cell(p.yM() + SAME_M); y++) {
                for (long z = cell(p.zM() - SAME_M); z <= cell(p.zM() + SAME_M); z++) {
                    for (int hold : cells.getOrDefault(new Cell(x, y, z), List.of())) {
                        double awayM = graph.place(hold).distanceM(p);
                        if (awayM <= bestM) {
                            best = hold;
                            bestM = awayM;
                        }
                    }
                }
            }
        }
        return best;
    }

    /** The nearest hold of a support or platform, or {@link #NONE} where it has none of its own. */
    int nearest(Point p, String on) {
        int best = at(p);
        double bestM = Double.POSITIVE_INFINITY;
        if (best != NONE) {
            return best;
        }
        for (int hold = 0; hold < graph.holdCount(); hold++) {
            double awayM = graph.place(hold).distanceM(p);
            if (awayM < bestM && graph.support(hold).equals(on)) {
                best = hold;
                bestM = awayM;
            }
        }
        return best;
    }

    private static long cell(double m) {
        return (long) Math.floor(m / CELL_M);
    }
}
