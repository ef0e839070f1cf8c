package limbway.model.graph;

import limbway.model.body.Body;
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
    private final int[] milliJ;

    private MoveCosts(Body body, int[] milliJ) {
        this.body = body;
        this.milliJ = milliJ;
    }

    /**
     * Costs every move of a graph.
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
            milliJ[m] = prices.milliJ(m);
        }
        return new MoveCosts(body, milliJ);
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
     * @return energy [mJ], at least 1, or {@link #IMPOSSIBLE}
     */
    public int milliJ(int move) {
        return milliJ[move];
    }
}
