package limbway.sim.habitat;

import java.util.Arrays;
import java.util.Set;

import limbway.model.graph.RouteGraph;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.model.route.Way;

/**
 * All ways of one body between the places where animals stop, looked up by number.
 *
 * <p>Animals stop only at holds from which a resource is used, here called starts and numbered from 0 in order of the
 * hold. A passage leads from a start to a resource; a decision then reads arrays instead of walking trees.
 */
public final class Passages {

    private final int[] holds;
    private final int[] startOfHold;
    private final int resources;
    private final ChoiceSharpness sharpness;
    private final Search.Reached[] ways;
    private final Leg[] offGround;
    private final Leg[] overGround;

    /** What a decision needs to know of a way. */
    private record Leg(Way way, int end, long ms, double addedShare) {}

    /**
     * Looks up every way once.
     *
     * @param routes the ways of one body
     * @param added ids of supports and platforms that are not as in the base layout
     */
    Passages(Routes routes, Set<String> added) {
        RouteGraph graph = routes.graph();
        sharpness = routes.sharpness();
        resources = graph.resources().size();
        startOfHold = new int[graph.holdCount()];
        Arrays.fill(startOfHold, -1);
        for (int r = 0; r < resources; r++) {
            for (int hold : graph.useHolds(r)) {
                startOfHold[hold] = 0;
            }
        }
        holds = java.util.stream.IntStream.range(0, startOfHold.length)
                .filter(hold -> startOfHold[hold] == 0)
                .toArray();
        for (int start = 0; start < holds.length; start++) {
            startOfHold[holds[start]] = start;
        }
        ways = new Search.Reached[holds.length * resources];
        offGround = new Leg[ways.length];
        overGround = new Leg[ways.length];
        for (int passage = 0; passage < ways.length; passage++) {
            if (routes.find(holds[passage / resources], passage % resources) instanceof Search.Reached reached) {
                ways[passage] = reached;
                offGround[passage] =
                        reached.offGround().map(way -> leg(graph, way, added)).orElse(null);
                overGround[passage] =
                        reached.overGround().map(way -> leg(graph, way, added)).orElse(null);
            }
        }
    }

    private Leg leg(RouteGraph graph, Way way, Set<String> added) {
        int last = way.holds().get(way.holds().size() - 1);
        return new Leg(way, startOfHold[last], Math.round(way.seconds() * 1000), addedShare(graph, way, added));
    }

    private static double addedShare(RouteGraph graph, Way way, Set<String> added) {
        double addedM = 0;
        double allM = 0;
        for (int move : way.moves()) {
            allM += graph.lengthM(move);
            if (!added.isEmpty() && !graph.moveOnGround(move) && added.contains(graph.support(graph.to(move)))) {
                addedM += graph.lengthM(move);
            }
        }
        return allM > 0 ? addedM / allM : 0;
    }

    /**
     * Number of holds at which animals stop.
     *
     * @return 0 or more
     */
    public int startCount() {
        return holds.length;
    }

    /**
     * The hold of a start.
     *
     * @param start number of a start
     * @return number of a hold of the graph
     */
    public int hold(int start) {
        return holds[start];
    }

    /**
     * The start at a hold.
     *
     * @param hold number of a hold of the graph
     * @return number of the start, or -1 where no resource is used
     */
    public int startAt(int hold) {
        return startOfHold[hold];
    }

    /**
     * The number of a passage.
     *
     * @param start number of a start
     * @param resource number of a resource
     * @return number for the other methods
     */
    public int passage(int start, int resource) {
        return start * resources + resource;
    }

    /**
     * Whether there is any way.
     *
     * @param passage number of a passage
     * @return true if the resource can be reached
     */
    public boolean isOpen(int passage) {
        return ways[passage] != null;
    }

    /**
     * The ways of a passage.
     *
     * @param passage number of an open passage
     * @return the same object at every call
     */
    public Search.Reached ways(int passage) {
        return ways[passage];
    }

    /**
     * How often an animal takes the way off the ground, when both ways have costs of their own beyond energy.
     *
     * @param passage number of an open passage
     * @param offJ what is added to the way off the ground [J], 0 or more
     * @param overJ what is added to the way over the ground [J], 0 or more
     * @return share, 0 to 1; as without those costs where there is but one way, or where one is never taken
     */
    public double offGroundShare(int passage, double offJ, double overJ) {
        double share = ways[passage].offGroundShare();
        if (share <= 0 || share >= 1 || (offJ == 0 && overJ == 0)) {
            return share;
        }
        return sharpness.shareOfFirst(
                way(passage, true).milliJ() + Math.round(offJ * 1000),
                way(passage, false).milliJ() + Math.round(overJ * 1000));
    }

    /**
     * Number of passages, open or not.
     *
     * @return starts times resources
     */
    public int count() {
        return ways.length;
    }

    /**
     * Whether there is a way.
     *
     * @param passage number of a passage
     * @param off true for the way off the ground
     * @return false where the passage is shut or has no such way
     */
    public boolean hasWay(int passage, boolean off) {
        return leg(passage, off) != null;
    }

    /**
     * One of the two ways.
     *
     * @param passage number of an open passage
     * @param off true for the way off the ground, false for the way over it; that way must exist
     * @return the way
     */
    public Way way(int passage, boolean off) {
        return leg(passage, off).way;
    }

    /**
     * Where one of the two ways ends.
     *
     * @param passage number of an open passage
     * @param off true for the way off the ground; that way must exist
     * @return number of a start
     */
    public int end(int passage, boolean off) {
        return leg(passage, off).end;
    }

    /**
     * How much of one of the two ways leads over what is not as in the base layout.
     *
     * @param passage number of an open passage
     * @param off true for the way off the ground; that way must exist
     * @return share of its length, 0 to 1
     */
    public double addedShare(int passage, boolean off) {
        return leg(passage, off).addedShare;
    }

    /**
     * How long one of the two ways takes.
     *
     * @param passage number of an open passage
     * @param off true for the way off the ground; that way must exist
     * @return time [ms]
     */
    public long ms(int passage, boolean off) {
        return leg(passage, off).ms;
    }

    /**
     * Whether a way has any chance of being taken.
     *
     * @param passage number of an open passage
     * @param off true for the way off the ground
     * @return false where there is no such way, or where the choice never falls on it
     */
    public boolean mayGo(int passage, boolean off) {
        double share = ways[passage].offGroundShare();
        return off ? share > 0 : share < 1;
    }

    /**
     * What a trip costs on average over the choice between the ways.
     *
     * @param passage number of an open passage
     * @return energy [J]
     */
    public double meanJ(int passage) {
        return mean(passage, leg -> leg.way.milliJ() / 1000.0);
    }

    /**
     * How long a trip takes on average over the choice between the ways.
     *
     * @param passage number of an open passage
     * @return time [ms]
     */
    public double meanMs(int passage) {
        return mean(passage, leg -> leg.ms);
    }

    /**
     * How far a trip leads over the ground on average over the choice between the ways.
     *
     * @param passage number of an open passage
     * @return length [m]
     */
    public double meanGroundM(int passage) {
        return mean(passage, leg -> leg.way.lengthM() - leg.way.offGroundM());
    }

    private double mean(int passage, java.util.function.ToDoubleFunction<Leg> figure) {
        double share = ways[passage].offGroundShare();
        double off = mayGo(passage, true) ? share * figure.applyAsDouble(offGround[passage]) : 0;
        double over = mayGo(passage, false) ? (1 - share) * figure.applyAsDouble(overGround[passage]) : 0;
        return off + over;
    }

    private Leg leg(int passage, boolean off) {
        return off ? offGround[passage] : overGround[passage];
    }
}
