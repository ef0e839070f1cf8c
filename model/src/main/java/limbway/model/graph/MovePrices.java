package limbway.model.graph;

import limbway.model.body.Body;
import limbway.model.body.LocomotorMode;
import limbway.model.energy.ComplianceCost;
import limbway.model.energy.Crossing;
import limbway.model.energy.EnergySettings;
import limbway.model.energy.ModeCost;
import limbway.model.energy.ZigzagCost;

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
    private final ZigzagCost zigzag;
    private final ComplianceCost compliance;
    private final double transferM;
    private final FlungPrices flung;
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
        this.zigzag = new ZigzagCost(body.massKg());
        this.compliance = new ComplianceCost(settings.compliance());
        this.transferM = settings.compliance().transferM();
        this.flung = new FlungPrices(graph, body, settings);
        this.canHold = new boolean[moves.carriers.length];
        this.canWalkOn = new boolean[moves.carriers.length];
        for (int c = 0; c < canHold.length; c++) {
            canHold[c] = moves.carriers[c].canHold(body);
            canWalkOn[c] = moves.carriers[c].canWalkOn(body);
        }
    }

    /** Cost of a move [mJ], or {@link MoveCosts#IMPOSSIBLE}. */
    int milliJ(int m) {
        if (FlungPrices.covers(moves.mode(m))) {
            return flung.of(m) instanceof Crossing.Possible possible
                    ? Math.max(1, whole(m, 1000 * possible.energyJ()))
                    : MoveCosts.IMPOSSIBLE;
        }
        int from = moves.from[m];
        int to = moves.to[m];
        double dx = holds.xM[to] - holds.xM[from];
        double dy = holds.yM[to] - holds.yM[from];
        double dz = holds.zM[to] - holds.zM[from];
        double slopeDeg = Math.rint(
                        StrictMath.toDegrees(StrictMath.atan2(dz, Math.sqrt(dx * dx + dy * dy))) * SLOPE_STEPS_PER_DEG)
                / SLOPE_STEPS_PER_DEG;
        if (!isPossible(m, slopeDeg) || bendsAway(m)) {
            return MoveCosts.IMPOSSIBLE;
        }
        double lengthM = Math.sqrt(dx * dx + dy * dy + dz * dz);
        // places along one line share a zero, so that rounded costs add up however the line is divided
        double startM = (holds.xM[from] * dx + holds.yM[from] * dy + holds.zM[from] * dz) / lengthM;
        double milliJPerM = 1000 * jPerM(m, slopeDeg);
        double along = Math.rint(milliJPerM * (startM + lengthM)) - Math.rint(milliJPerM * startM);
        return whole(m, along + 1000 * transferJ(m));
    }

    private int whole(int m, double milliJ) {
        if (milliJ > Integer.MAX_VALUE) {
            throw new IllegalArgumentException("move from hold " + moves.from[m] + " to hold " + moves.to[m]
                    + ": cost = " + milliJ / 1e6 + " kJ, allowed up to 2147 kJ");
        }
        return (int) Math.rint(milliJ);
    }

    /** A support that sinks under half the weight by more than the body reaches cannot be changed over to: an assumption. */
    private boolean bendsAway(int m) {
        double stiffnessNPerM = moves.stiffnessNPerM[m];
        return !Double.isInfinite(stiffnessNPerM) && compliance.sinkM(body.massKg(), stiffnessNPerM) > body.gapReachM();
    }

    /** What it costs that the carrier arrived at gives way; nothing on one that does not, or along the same one. */
    private double transferJ(int m) {
        double stiffnessNPerM = moves.stiffnessNPerM[m];
        return Double.isInfinite(stiffnessNPerM) ? 0 : compliance.transferJ(body.massKg(), stiffnessNPerM);
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
            case BIPEDAL_WALK ->
                bears(first) && canHold[second] && moves.gapM[m] <= body.overheadReachM() + Draft.REACH_SLACK_M;
            case BRACHIATE -> body.brachiates() && canHold[first] && !isHugged(first);
            case SWAY, LEAP, DROP -> false;
        };
    }

    private boolean bears(int carrier) {
        return body.massKg() <= moves.carriers[carrier].bearsKg();
    }

    private boolean isHugged(int carrier) {
        return moves.carriers[carrier].diameterM() > body.gripDiameterM();
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
        Carrier carrier = moves.carriers[moves.firstCarrier[m]];
        boolean spread = mode != LocomotorMode.BRACHIATE
                && carrier.isSpread()
                && moves.carriers[moves.secondCarrier[m]].isSpread();
        double givesNPerM = spread && moves.firstCarrier[m] == moves.secondCarrier[m] ? carrier.givesNPerM() : 0;
        boolean turning = mode == LocomotorMode.QUADRUPEDAL_WALK && carrier.standing();
        int kind = 1 + (spread ? MoveArrays.MODES.length : turning ? MoveArrays.MODES.length + 1 : mode.ordinal());
        int slot = ((Double.hashCode(slopeDeg) * 31 + kind) * 0x9e3779b9) >>> (Integer.SIZE - CACHE_BITS);
        if (cachedKind[slot] != kind || cachedSlopeDeg[slot] != slopeDeg) {
            cachedKind[slot] = kind;
            cachedSlopeDeg[slot] = slopeDeg;
            cachedJPerM[slot] = spread
                    ? cost.throughBranchesJPerM(body, slopeDeg)
                    : turning ? body.massKg() * zigzag.jPerKgM(slopeDeg) : cost.jPerM(body, mode, slopeDeg);
        }
        boolean gives = givesNPerM > 0 && !Double.isInfinite(givesNPerM);
        return cachedJPerM[slot] + (gives ? compliance.transferJ(body.massKg(), givesNPerM) / transferM : 0);
    }
}
