package limbway.model.link;

import java.util.List;

import limbway.model.graph.RouteGraph;
import limbway.model.route.IncomingMoves;
import limbway.model.route.ReverseTree;
import limbway.model.route.Routes;

/** Costs of one body between the ties, and over each link in both directions [mJ]. */
final class TieCosts {

    private final int[][] between;
    private final int[] there;
    private final int[] back;

    private TieCosts(int[][] between, int[] there, int[] back) {
        this.between = between;
        this.there = there;
        this.back = back;
    }

    /** Ways between ties are those of the graph; a tie that is at no hold leads nowhere. */
    static TieCosts of(RouteGraph graph, Routes routes, List<Integer> holds, List<LinkEffect> effects, int bodyNumber) {
        IncomingMoves moves = new IncomingMoves(graph, routes.costs());
        int[][] between = new int[holds.size()][holds.size()];
        for (int to = 0; to < between.length; to++) {
            ReverseTree tree =
                    holds.get(to) == HoldsByPlace.NONE ? null : ReverseTree.offGround(moves, new int[] {holds.get(to)});
            for (int from = 0; from < between.length; from++) {
                between[from][to] = tree == null || holds.get(from) == HoldsByPlace.NONE
                        ? ReverseTree.UNREACHABLE
                        : tree.milliJ(holds.get(from));
            }
        }
        int[] there = new int[effects.size()];
        int[] back = new int[effects.size()];
        for (int c = 0; c < there.length; c++) {
            there[c] = effects.get(c).crossings().get(bodyNumber).thereMilliJ();
            back[c] = effects.get(c).crossings().get(bodyNumber).backMilliJ();
        }
        return new TieCosts(between, there, back);
    }

    int betweenMilliJ(int from, int to) {
        return between[from][to];
    }

    int thereMilliJ(int link) {
        return there[link];
    }

    int backMilliJ(int link) {
        return back[link];
    }
}
