package limbway.reports.patterns;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import limbway.model.geometry.Point;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.sim.experiment.Outcome;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;

/** Smallest part of the room within reach in which half of the waking time is spent, by cells of a metre. */
final class UsedRoom {

    private static final double HALF = 0.5;

    private UsedRoom() {}

    /** Cells in which half of the time is spent, over all cells that some animal can get to. */
    static Measurement halfOfTheTime(Run run) {
        return lives -> {
            Outcome outcome = lives.outcome(run);
            int all = reachable(outcome.habitat());
            List<Double> found = new ArrayList<>();
            for (Journal journal : outcome.journals()) {
                found.add((double) cellsOfHalf(outcome.habitat(), journal) / all);
            }
            return found;
        };
    }

    private static int cellsOfHalf(Habitat habitat, Journal journal) {
        Map<Long, Double> seconds = new HashMap<>();
        double[] all = new double[1];
        Piece.visit(habitat, journal, piece -> {
            seconds.merge(cell(habitat.graph().place(piece.toHold())), piece.seconds(), Double::sum);
            all[0] += piece.seconds();
        });
        List<Double> most = new ArrayList<>(seconds.values());
        most.sort(Collections.reverseOrder());
        int cells = 0;
        double sum = 0;
        while (sum < HALF * all[0]) {
            sum += most.get(cells++);
        }
        return cells;
    }

    /** Cells with a hold that a move of some body of the group leads to. */
    private static int reachable(Habitat habitat) {
        RouteGraph graph = habitat.graph();
        Set<Long> cells = new HashSet<>();
        habitat.bodies().forEach(body -> {
            MoveCosts costs = habitat.routes(body).costs();
            for (int move = 0; move < graph.moveCount(); move++) {
                if (costs.milliJ(move) != MoveCosts.IMPOSSIBLE) {
                    cells.add(cell(graph.place(graph.to(move))));
                }
            }
        });
        return cells.size();
    }

    private static long cell(Point place) {
        long x = (long) Math.floor(place.xM());
        long y = (long) Math.floor(place.yM());
        long z = (long) Math.floor(place.zM());
        return ((x + 5000) * 10_000 + y + 5000) * 1000 + z;
    }
}
