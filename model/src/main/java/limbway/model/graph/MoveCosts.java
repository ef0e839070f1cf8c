package limbway.model.graph;

import limbway.model.body.Body;
import limbway.model.body.LocomotorMode;
import limbway.model.energy.EnergySettings;
import limbway.model.energy.ModeCost;

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

    private static final double STANDING_REACH_DEG = 60;

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
        ModeCost cost = new ModeCost(settings);
        MoveArrays moves = graph.moves();
        int[] milliJ = new int[moves.to.length];
        for (int m = 0; m < milliJ.length; m++) {
            if (possible(moves, m, body)) {
                boolean inCrown = moves.carriers[moves.firstCarrier[m]].equals(Carrier.BRANCHES)
                        && moves.carriers[moves.secondCarrier[m]].equals(Carrier.BRANCHES);
                double slopeDeg = moves.slopeDeg[m];
                double jPerM = inCrown
                        ? cost.throughBranchesJPerM(body, slopeDeg)
                        : cost.jPerM(body, MoveArrays.MODES[moves.mode[m]], slopeDeg);
                milliJ[m] = rounded(jPerM, moves, m);
            } else {
                milliJ[m] = IMPOSSIBLE;
            }
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

    private static int rounded(double jPerM, MoveArrays moves, int m) {
        double milliJPerM = 1000 * jPerM;
        double end = Math.rint(milliJPerM * (moves.startM[m] + moves.lengthM[m]));
        double cost = Math.max(1, end - Math.rint(milliJPerM * moves.startM[m]));
        if (cost > Integer.MAX_VALUE) {
            throw new IllegalArgumentException("move from hold " + moves.from[m] + " to hold " + moves.to[m]
                    + ": cost = " + cost / 1e6 + " kJ, allowed up to 2147 kJ");
        }
        return (int) cost;
    }

    private static boolean possible(MoveArrays moves, int m, Body body) {
        Carrier first = moves.carriers[moves.firstCarrier[m]];
        Carrier second = moves.carriers[moves.secondCarrier[m]];
        LocomotorMode mode = MoveArrays.MODES[moves.mode[m]];
        return switch (mode) {
            case QUADRUPEDAL_WALK -> first.canWalkOn(body);
            case VERTICAL_CLIMB, VERTICAL_DESCENT -> first.canHold(body);
            case CLAMBER -> first.equals(second) ? first.canHold(body) : first.canUse(body) && second.canUse(body);
            case BRIDGE ->
                first.canUse(body)
                        && second.canUse(body)
                        && moves.gapM[m] <= reachM(body, first, second, moves.slopeDeg[m]) + Draft.REACH_SLACK_M;
        };
    }

    /** A standing animal reaches further up, and one that hangs as far down, than either reaches across. */
    private static double reachM(Body body, Carrier first, Carrier second, double slopeDeg) {
        boolean upright = Math.abs(slopeDeg) >= STANDING_REACH_DEG && (first.standing() || second.standing());
        return upright ? Math.max(body.overheadReachM(), body.gapReachM()) : body.gapReachM();
    }
}
