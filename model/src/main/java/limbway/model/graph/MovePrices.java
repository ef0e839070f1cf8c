package limbway.model.graph;

import limbway.model.body.Body;
import limbway.model.body.LocomotorMode;
import limbway.model.energy.EnergySettings;
import limbway.model.energy.ModeCost;

/** Decides move by move whether one body can make it and what it costs. */
final class MovePrices {

    private static final double STANDING_REACH_DEG = 60;

    /** Moves along one line differ in slope by rounding only; a rounded slope gives them one price a metre. */
    private static final double SLOPE_STEPS_PER_DEG = 1e9;

    private static final int CACHE_BITS = 12;

    private final HoldArrays holds;
    private final MoveArrays moves;
    private final Body body;
    private final ModeCost cost;
    private final boolean[] canHold;
    private final boolean[] canWalkOn;
    private final double[] cachedSlopeDeg = new double[1 << CACHE_BITS];
    private final int[] cachedKind = new int[1 << CACHE_BITS];
    private final double[] cachedJPerM = new double[1 << CACHE_BITS];

    MovePrices(RouteGraph graph, Body body, EnergySettings settings) {
        this.holds = graph.holds();
        this.moves = graph.moves();
        this.body = body;
        this.cost = new ModeCost(settings);
        this.canHold = new boolean[moves.carriers.length];
        this.canWalkOn = new boolean[moves.carriers.length];
        for (int c = 0; c < canHold.length; c++) {
            canHold[c] = moves.carriers[c].canHold(body);
            canWalkOn[c] = moves.carriers[c].canWalkOn(body);
        }
    }

    /** Cost of a move [mJ], or {@link MoveCosts#IMPOSSIBLE}. */
    int milliJ(int m) {
        int from = moves.from[m];
        int to = moves.to[m];
        double dx = holds.xM[to] - holds.xM[from];
        double dy = holds.yM[to] - holds.yM[from];
        double dz = holds.zM[to] - holds.zM[from];
        double slopeDeg = Math.rint(
                        StrictMath.toDegrees(StrictMath.atan2(dz, Math.sqrt(dx * dx + dy * dy))) * SLOPE_STEPS_PER_DEG)
                / SLOPE_STEPS_PER_DEG;
        if (!isPossible(m, slopeDeg)) {
            return MoveCosts.IMPOSSIBLE;
        }
        double lengthM = Math.sqrt(dx * dx + dy * dy + dz * dz);
        // places along one line share a zero, so that rounded costs add up however the line is divided
        double startM = (holds.xM[from] * dx + holds.yM[from] * dy + holds.zM[from] * dz) / lengthM;
        double milliJPerM = 1000 * jPerM(m, slopeDeg);
        double whole = Math.rint(milliJPerM * (startM + lengthM)) - Math.rint(milliJPerM * startM);
        if (whole > Integer.MAX_VALUE) {
            throw new IllegalArgumentException("move from hold " + from + " to hold " + to + ": cost = " + whole / 1e6
                    + " kJ, allowed up to 2147 kJ");
        }
        return (int) Math.max(1, whole);
    }

    private boolean isPossible(int m, double slopeDeg) {
        int first = moves.firstCarrier[m];
        int second = moves.secondCarrier[m];
        return switch (moves.mode(m)) {
            case QUADRUPEDAL_WALK -> canWalkOn[first];
            case VERTICAL_CLIMB, VERTICAL_DESCENT -> canHold[first];
            case CLAMBER -> first == second ? canHold[first] : canUse(first) && canUse(second);
            case BRIDGE ->
                canUse(first)
                        && canUse(second)
                        && moves.gapM[m] <= reachM(first, second, slopeDeg) + Draft.REACH_SLACK_M;
            case BIPEDAL_WALK, BRACHIATE, SWAY, LEAP, DROP -> false;
        };
    }

    private boolean canUse(int carrier) {
        return canHold[carrier] || canWalkOn[carrier];
    }

    /** A standing animal reaches further up, and one that hangs as far down, than either reaches across. */
    private double reachM(int first, int second, double slopeDeg) {
        boolean upright = Math.abs(slopeDeg) >= STANDING_REACH_DEG
                && (moves.carriers[first].standing() || moves.carriers[second].standing());
        return upright ? Math.max(body.overheadReachM(), body.gapReachM()) : body.gapReachM();
    }

    private double jPerM(int m, double slopeDeg) {
        LocomotorMode mode = moves.mode(m);
        boolean inCrown = moves.carriers[moves.firstCarrier[m]].equals(Carrier.BRANCHES)
                && moves.carriers[moves.secondCarrier[m]].equals(Carrier.BRANCHES);
        int kind = 1 + (inCrown ? LocomotorMode.values().length : mode.ordinal());
        int slot = ((Double.hashCode(slopeDeg) * 31 + kind) * 0x9e3779b9) >>> (Integer.SIZE - CACHE_BITS);
        if (cachedKind[slot] != kind || cachedSlopeDeg[slot] != slopeDeg) {
            cachedKind[slot] = kind;
            cachedSlopeDeg[slot] = slopeDeg;
            cachedJPerM[slot] = inCrown ? cost.throughBranchesJPerM(body, slopeDeg) : cost.jPerM(body, mode, slopeDeg);
        }
        return cachedJPerM[slot];
    }
}
