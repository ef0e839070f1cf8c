package limbway.model.explain.flip;

import java.util.Arrays;
import java.util.PriorityQueue;

import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ReverseTree;

/**
 * Least cost from one place to every hold, without a move on the ground and with one.
 *
 * @source Dijkstra 1959, Numer. Math. 1:269-271, doi 10.1007/BF01386390
 */
final class ForwardTree {

    private static final int STATE_BITS = 32;

    private final int[] off;
    private final int[] over;

    /** Searches from holds that cost nothing, no farther than a cost. */
    ForwardTree(RouteGraph graph, MoveCosts costs, int[] starts, int mostMilliJ) {
        int n = graph.holdCount();
        off = filled(n);
        over = filled(n);
        PriorityQueue<Long> queue = new PriorityQueue<>();
        for (int start : starts) {
            off[start] = 0;
            queue.add(key(0, start));
        }
        while (!queue.isEmpty()) {
            long first = queue.poll();
            int cost = (int) (first >>> STATE_BITS);
            int state = (int) (first & Integer.MAX_VALUE);
            boolean walked = state >= n;
            int hold = walked ? state - n : state;
            if (cost > (walked ? over[hold] : off[hold])) {
                continue;
            }
            for (int move = graph.firstMove(hold); move < graph.firstMove(hold + 1); move++) {
                long then = (long) cost + costs.milliJ(move);
                if (costs.milliJ(move) == MoveCosts.IMPOSSIBLE || then > mostMilliJ) {
                    continue;
                }
                boolean onGround = walked || graph.moveOnGround(move);
                int[] best = onGround ? over : off;
                int next = graph.to(move);
                if (then < best[next]) {
                    best[next] = (int) then;
                    queue.add(key((int) then, onGround ? next + n : next));
                }
            }
        }
    }

    /** Cost without a move on the ground [mJ], or {@link ReverseTree#UNREACHABLE}. */
    int offGroundMilliJ(int hold) {
        return off[hold];
    }

    /** Cost with a move on the ground [mJ], or {@link ReverseTree#UNREACHABLE}. */
    int overGroundMilliJ(int hold) {
        return over[hold];
    }

    private static long key(int cost, int state) {
        return ((long) cost << STATE_BITS) | state;
    }

    private static int[] filled(int n) {
        int[] all = new int[n];
        Arrays.fill(all, ReverseTree.UNREACHABLE);
        return all;
    }
}
