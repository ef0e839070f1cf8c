package limbway.model.route;

import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;

/**
 * The moves one body can make, grouped by the hold they end at, those off the ground first.
 *
 * <p>A search backwards from a target reads these arrays from front to back and nothing else; moves that the body cannot
 * make are left out, and the grouping spares a test for each move.
 */
public final class IncomingMoves {

    /** Buckets an eighth as wide as the mean move, measured best of 1, 1/4 and 1/16: see docs/benchmarks.md. */
    private static final int BUCKETS_PER_MEAN_LOG2 = 3;

    private final int bucketShift;
    private final int greatestMilliJ;
    private final int[] start;
    private final int[] groundStart;
    private final int[] from;
    private final int[] milliJ;
    private final int[] move;

    /**
     * Selects and groups the moves of a body.
     *
     * @param graph the graph
     * @param costs the body's costs on that graph
     */
    public IncomingMoves(RouteGraph graph, MoveCosts costs) {
        this(graph, costs, true);
    }

    /**
     * Selects and groups the moves of a body the other way round, by the hold they start from: a tree over them leads from
     * its target to every hold instead of from every hold to its target.
     *
     * @param graph the graph
     * @param costs the body's costs on that graph
     * @return moves whose {@link #from} is the hold they end at
     */
    public static IncomingMoves reversed(RouteGraph graph, MoveCosts costs) {
        return new IncomingMoves(graph, costs, false);
    }

    private IncomingMoves(RouteGraph graph, MoveCosts costs, boolean into) {
        int holds = graph.holdCount();
        start = new int[holds + 1];
        groundStart = new int[holds];
        int possible = 0;
        for (int m = 0; m < graph.moveCount(); m++) {
            if (costs.milliJ(m) != MoveCosts.IMPOSSIBLE) {
                possible++;
            }
        }
        from = new int[possible];
        milliJ = new int[possible];
        move = new int[possible];
        int count = 0;
        for (int hold = 0; hold < holds; hold++) {
            start[hold] = count;
            count = into ? copy(graph, costs, hold, false, count) : copyOut(graph, costs, hold, false, count);
            groundStart[hold] = count;
            count = into ? copy(graph, costs, hold, true, count) : copyOut(graph, costs, hold, true, count);
        }
        start[holds] = count;
        long sum = 0;
        int greatest = 1;
        for (int cost : milliJ) {
            sum += cost;
            greatest = Math.max(greatest, cost);
        }
        greatestMilliJ = greatest;
        int mean = (int) Math.max(1, sum / Math.max(1, possible));
        bucketShift = Math.max(0, 31 - Integer.numberOfLeadingZeros(mean) - BUCKETS_PER_MEAN_LOG2);
    }

    /** An empty queue whose buckets suit the costs of these moves, for starting costs up to a given one. */
    BucketQueue newQueue(int greatestStartMilliJ) {
        return new BucketQueue(bucketShift, Math.addExact(greatestStartMilliJ, greatestMilliJ));
    }

    private int copy(RouteGraph graph, MoveCosts costs, int hold, boolean onGround, int count) {
        int next = count;
        for (int i = graph.firstInto(hold); i < graph.firstInto(hold + 1); i++) {
            int m = graph.moveInto(i);
            if (graph.moveOnGround(m) == onGround && costs.milliJ(m) != MoveCosts.IMPOSSIBLE) {
                from[next] = graph.from(m);
                milliJ[next] = costs.milliJ(m);
                move[next] = m;
                next++;
            }
        }
        return next;
    }

    private int copyOut(RouteGraph graph, MoveCosts costs, int hold, boolean onGround, int count) {
        int next = count;
        for (int m = graph.firstMove(hold); m < graph.firstMove(hold + 1); m++) {
            if (graph.moveOnGround(m) == onGround && costs.milliJ(m) != MoveCosts.IMPOSSIBLE) {
                from[next] = graph.to(m);
                milliJ[next] = costs.milliJ(m);
                move[next] = m;
                next++;
            }
        }
        return next;
    }

    /**
     * Number of holds of the graph.
     *
     * @return 0 or more
     */
    public int holdCount() {
        return groundStart.length;
    }

    /**
     * Number of moves that the body can make.
     *
     * @return 0 or more
     */
    public int moveCount() {
        return from.length;
    }

    /**
     * First move into a hold.
     *
     * @param hold number of a hold
     * @return index for the other methods
     */
    public int start(int hold) {
        return start[hold];
    }

    /**
     * First move on the ground into a hold.
     *
     * @param hold number of a hold
     * @return index, from {@code start(hold)} to {@code end(hold)}
     */
    public int firstOnGround(int hold) {
        return groundStart[hold];
    }

    /**
     * End of the moves into a hold.
     *
     * @param hold number of a hold
     * @return index after the last
     */
    public int end(int hold) {
        return start[hold + 1];
    }

    /**
     * Where a move starts.
     *
     * @param index place in these arrays
     * @return number of a hold
     */
    public int from(int index) {
        return from[index];
    }

    /**
     * Cost of a move.
     *
     * @param index place in these arrays
     * @return energy [mJ], 0 or more
     */
    public int milliJ(int index) {
        return milliJ[index];
    }

    /**
     * The move's number in the graph.
     *
     * @param index place in these arrays
     * @return number of a move
     */
    public int move(int index) {
        return move[index];
    }
}
