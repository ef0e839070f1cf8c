package limbway.model.route;

import java.util.Arrays;

/**
 * Least cost from every hold to one target, with the move to make next at each hold.
 *
 * <p>Built backwards from the target by Dijkstra's method over buckets of cost. Costs are whole millijoules, so they equal those of any other
 * correct method exactly. A way is read by walking {@link #nextMove}, at a cost proportional to its length.
 *
 * @source Dijkstra 1959, Numer. Math. 1:269-271, doi 10.1007/BF01386390
 */
public final class ReverseTree {

    /** Cost of a hold from which the target cannot be reached. */
    public static final int UNREACHABLE = Integer.MAX_VALUE;

    /** No further move: the target itself, or a hold from which it cannot be reached. */
    public static final int NO_MOVE = -1;

    private final int[] milliJ;
    private final int[] next;

    private ReverseTree(int holds) {
        milliJ = new int[holds];
        next = new int[holds];
        Arrays.fill(milliJ, UNREACHABLE);
        Arrays.fill(next, NO_MOVE);
    }

    /**
     * The tree of ways that make no move on the ground.
     *
     * @param moves moves by the hold they end at
     * @param targets holds that count as arrival
     * @return the tree
     * @throws ArithmeticException if a way costs more than 2147 kJ
     */
    public static ReverseTree offGround(IncomingMoves moves, int[] targets) {
        ReverseTree tree = new ReverseTree(moves.holdCount());
        BucketQueue queue = moves.newQueue(0);
        for (int target : targets) {
            tree.milliJ[target] = 0;
            queue.add(0, target);
        }
        tree.settle(moves, queue, false);
        return tree;
    }

    /**
     * The tree of ways that make at least one move on the ground.
     *
     * <p>The last move on the ground is followed by a way of the other tree; such moves are where this tree starts.
     *
     * @param moves moves by the hold they end at
     * @param offGround the tree to the same target without moves on the ground
     * @return the tree
     * @throws ArithmeticException if a way costs more than 2147 kJ
     */
    public static ReverseTree overGround(IncomingMoves moves, ReverseTree offGround) {
        ReverseTree tree = new ReverseTree(moves.holdCount());
        BucketQueue queue = moves.newQueue(offGround.greatestMilliJ());
        tree.leaveGround(moves, offGround, queue);
        tree.settle(moves, queue, true);
        return tree;
    }

    /**
     * The tree of ways without a move on the ground that go on, from some holds, by ways of another graph.
     *
     * @param moves moves by the hold they end at
     * @param onwardMilliJ what it costs from each hold to the target in the other graph [mJ], {@link #UNREACHABLE} where it
     *     is not one of it
     * @param targets holds of these moves that count as arrival
     * @return the tree; {@link #NO_MOVE} where the way goes on in the other graph at once
     * @throws ArithmeticException if a way costs more than 2147 kJ
     */
    public static ReverseTree offGroundOnward(IncomingMoves moves, int[] onwardMilliJ, int[] targets) {
        ReverseTree tree = new ReverseTree(moves.holdCount());
        System.arraycopy(onwardMilliJ, 0, tree.milliJ, 0, onwardMilliJ.length);
        for (int target : targets) {
            tree.milliJ[target] = 0;
        }
        BucketQueue queue = moves.newQueue(tree.greatestMilliJ());
        tree.queueReached(queue);
        tree.settle(moves, queue, false);
        return tree;
    }

    /**
     * The tree of ways with at least one move on the ground that go on, from some holds, by ways of another graph.
     *
     * @param moves moves by the hold they end at
     * @param offGround the tree to the same target without moves on the ground
     * @param onwardMilliJ what it costs from each hold to the target in the other graph over the ground [mJ],
     *     {@link #UNREACHABLE} where it is not one of it
     * @return the tree; {@link #NO_MOVE} where the way goes on in the other graph at once
     * @throws ArithmeticException if a way costs more than 2147 kJ
     */
    public static ReverseTree overGroundOnward(IncomingMoves moves, ReverseTree offGround, int[] onwardMilliJ) {
        ReverseTree tree = new ReverseTree(moves.holdCount());
        System.arraycopy(onwardMilliJ, 0, tree.milliJ, 0, onwardMilliJ.length);
        BucketQueue queue = moves.newQueue(Math.max(tree.greatestMilliJ(), offGround.greatestMilliJ()));
        tree.queueReached(queue);
        tree.leaveGround(moves, offGround, queue);
        tree.settle(moves, queue, true);
        return tree;
    }

    private void queueReached(BucketQueue queue) {
        for (int hold = 0; hold < milliJ.length; hold++) {
            if (milliJ[hold] != UNREACHABLE) {
                queue.add(milliJ[hold], hold);
            }
        }
    }

    /** The last move on the ground, followed by a way of the other tree. */
    private void leaveGround(IncomingMoves moves, ReverseTree offGround, BucketQueue queue) {
        for (int hold = 0; hold < moves.holdCount(); hold++) {
            if (offGround.milliJ[hold] == UNREACHABLE) {
                continue;
            }
            for (int i = moves.firstOnGround(hold); i < moves.end(hold); i++) {
                offer(moves, i, offGround.milliJ[hold], queue);
            }
        }
    }

    /**
     * Cost of the best way of this tree's kind.
     *
     * @param hold where the way starts
     * @return energy [mJ], or {@link #UNREACHABLE}
     */
    public int milliJ(int hold) {
        return milliJ[hold];
    }

    /**
     * The move to make at a hold.
     *
     * @param hold where the animal is
     * @return number of a move of the graph, or {@link #NO_MOVE}
     */
    public int nextMove(int hold) {
        return next[hold];
    }

    private int greatestMilliJ() {
        int greatest = 0;
        for (int cost : milliJ) {
            if (cost != UNREACHABLE) {
                greatest = Math.max(greatest, cost);
            }
        }
        return greatest;
    }

    private void settle(IncomingMoves moves, BucketQueue queue, boolean withGround) {
        int[] settledAt = new int[milliJ.length];
        Arrays.fill(settledAt, UNREACHABLE);
        while (!queue.isEmpty()) {
            int hold = queue.poll();
            int cost = milliJ[hold];
            if (settledAt[hold] == cost) {
                continue;
            }
            settledAt[hold] = cost;
            int end = withGround ? moves.end(hold) : moves.firstOnGround(hold);
            for (int i = moves.start(hold); i < end; i++) {
                offer(moves, i, cost, queue);
            }
        }
    }

    private void offer(IncomingMoves moves, int i, int costBeyond, BucketQueue queue) {
        int cost = costBeyond + moves.milliJ(i);
        if (cost < 0) {
            throw new ArithmeticException("a way costs more than 2147 kJ; the enclosure is too large for its body");
        }
        int from = moves.from(i);
        if (cost < milliJ[from]) {
            milliJ[from] = cost;
            next[from] = moves.move(i);
            queue.add(cost, from);
        }
    }
}
