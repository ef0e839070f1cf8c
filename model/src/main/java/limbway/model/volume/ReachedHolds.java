package limbway.model.volume;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;

import limbway.model.geometry.Point;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;

/**
 * The holds to which moves that a body can make lead from the resources; without any resource, from all of the ground. A
 * door that opens at some hour counts as open.
 */
final class ReachedHolds {

    private final RouteGraph graph;
    private final MoveCosts costs;
    private final boolean fromResources;
    private final boolean[] reached;

    ReachedHolds(RouteGraph graph, MoveCosts costs) {
        this.graph = graph;
        this.costs = costs;
        this.reached = new boolean[graph.holdCount()];
        ArrayDeque<Integer> queue = new ArrayDeque<>();
        for (int r = 0; r < graph.resources().size(); r++) {
            for (int hold : graph.useHolds(r)) {
                visit(hold, queue);
            }
        }
        this.fromResources = !queue.isEmpty();
        for (int hold = 0; hold < reached.length && !fromResources; hold++) {
            if (graph.onGround(hold)) {
                visit(hold, queue);
            }
        }
        while (!queue.isEmpty()) {
            int hold = queue.poll();
            for (int move = graph.firstMove(hold); move < graph.firstMove(hold + 1); move++) {
                if (isPossible(move)) {
                    visit(graph.to(move), queue);
                }
            }
        }
    }

    private void visit(int hold, ArrayDeque<Integer> queue) {
        if (!reached[hold]) {
            reached[hold] = true;
            queue.add(hold);
        }
    }

    /** Whether the body can make a move at some hour of the day. */
    boolean isPossible(int move) {
        int door = graph.door(move);
        boolean everOpen = door < 0 || !graph.doors().get(door).open().isEmpty();
        return everOpen && costs.milliJ(move) != MoveCosts.IMPOSSIBLE;
    }

    /** Whether it is known where the body lives; else all of the ground counts. */
    boolean fromResources() {
        return fromResources;
    }

    boolean isReached(int hold) {
        return reached[hold];
    }

    /** The places of the holds that are reached, or of those that are not. */
    List<Point> places(boolean whetherReached) {
        List<Point> places = new ArrayList<>();
        for (int hold = 0; hold < reached.length; hold++) {
            if (reached[hold] == whetherReached) {
                places.add(graph.place(hold));
            }
        }
        return places;
    }

    /** The places of the reached holds that stand on the ground. */
    List<Point> onGround() {
        List<Point> places = new ArrayList<>();
        for (int hold = 0; hold < reached.length; hold++) {
            if (reached[hold] && graph.onGround(hold)) {
                places.add(graph.place(hold));
            }
        }
        return places;
    }
}
