package limbway.model.graph;

import limbway.model.body.Body;
import limbway.model.energy.Crossing;
import limbway.model.energy.EnergySettings;

/**
 * What each move of a graph costs one body, in whole millijoules, or that it cannot be made.
 *
 * <p>Whole numbers add exactly, so results do not depend on the order of adding. Each cost is the difference of two
 * rounded values along the line of the move; the costs of a line's parts therefore add up to the cost of the whole line,
 * to the millijoule, however many holds divide it.
 */
public final class MoveCosts {

    /** Marks a move that the body cannot make. */
    public static final int IMPOSSIBLE = -1;

    private final Body body;
    private final RouteGraph graph;
    private final FlungPrices flung;
    private final int[] milliJ;

    private MoveCosts(Body body, RouteGraph graph, FlungPrices flung, int[] milliJ) {
        this.body = body;
        this.graph = graph;
        this.flung = flung;
        this.milliJ = milliJ;
    }

    /**
     * Costs every move of a graph with all doors open that ever are.
     *
     * @param graph the graph
     * @param body who moves
     * @param settings multipliers of the energy model
     * @return the costs
     * @throws IllegalArgumentException if one move costs more than 2147 kJ, which no enclosure needs
     */
    public static MoveCosts of(RouteGraph graph, Body body, EnergySettings settings) {
        MovePrices prices = new MovePrices(graph, body, settings);
        int[] milliJ = new int[graph.moveCount()];
        for (int m = 0; m < milliJ.length; m++) {
            boolean shut = graph.door(m) >= 0
                    && graph.doors().get(graph.door(m)).open().isEmpty();
            milliJ[m] = shut ? IMPOSSIBLE : prices.milliJ(m);
        }
        return new MoveCosts(body, graph, new FlungPrices(graph, body, settings), milliJ);
    }

    /**
     * The same costs with the doors as they are at a time of day: what passes a shut door cannot be made.
     *
     * @param secondOfDay seconds after midnight, 0 to 86,399
     * @return costs; these themselves where every door is open
     */
    public MoveCosts at(int secondOfDay) {
        boolean[] open = new boolean[graph.doors().size()];
        boolean all = true;
        for (int d = 0; d < open.length; d++) {
            open[d] = graph.doors().get(d).isOpenAt(secondOfDay);
            all &= open[d];
        }
        if (all) {
            return this;
        }
        int[] then = milliJ.clone();
        for (int m = 0; m < then.length; m++) {
            if (graph.door(m) >= 0 && !open[graph.door(m)]) {
                then[m] = IMPOSSIBLE;
            }
        }
        return new MoveCosts(body, graph, flung, then);
    }

    /**
     * Time that a move takes.
     *
     * @param move number of a move that the body can make
     * @return seconds, 0 or more
     */
    public double seconds(int move) {
        if (FlungPrices.covers(graph.mode(move)) && flung.of(move) instanceof Crossing.Possible possible) {
            return possible.seconds();
        }
        return graph.lengthM(move) / body.speeds().inMode(graph.mode(move));
    }

    /**
     * Whose costs these are.
     *
     * @return the body
     */
    public Body body() {
        return body;
    }

    /**
     * Cost of a move.
     *
     * @param move number of a move
     * @return energy [mJ], 0 or more, or {@link #IMPOSSIBLE}
     */
    public int milliJ(int move) {
        return milliJ[move];
    }
}
