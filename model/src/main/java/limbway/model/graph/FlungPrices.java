package limbway.model.graph;

import limbway.model.body.Body;
import limbway.model.body.LocomotorMode;
import limbway.model.energy.Crossing;
import limbway.model.energy.DropCost;
import limbway.model.energy.EnergySettings;
import limbway.model.energy.LeapCost;
import limbway.model.energy.ModeCost;
import limbway.model.energy.SwayCost;

/** Energy and time of the moves that fling the whole body: sway, leap and drop. */
final class FlungPrices {

    private final RouteGraph graph;
    private final Body body;
    private final SwayCost sway;
    private final LeapCost leap;
    private final DropCost drop;
    private final ModeCost modes;

    FlungPrices(RouteGraph graph, Body body, EnergySettings settings) {
        this.graph = graph;
        this.body = body;
        this.sway = new SwayCost(settings.sway());
        this.leap = new LeapCost(settings.leap());
        this.drop = new DropCost(settings.leap());
        this.modes = new ModeCost(settings);
    }

    static boolean covers(LocomotorMode mode) {
        return mode == LocomotorMode.SWAY || mode == LocomotorMode.LEAP || mode == LocomotorMode.DROP;
    }

    /** What a move costs in whole, or why the body does not make it. */
    Crossing of(int move) {
        MoveArrays moves = graph.moves();
        Carrier from = moves.carriers[moves.firstCarrier[move]];
        Carrier to = moves.carriers[moves.secondCarrier[move]];
        if (!from.canUse(body) || !to.canUse(body)) {
            return new Crossing.Refused("the body cannot hold what it leaves or reaches");
        }
        return switch (graph.mode(move)) {
            case SWAY -> swayed(move, from);
            case LEAP -> leaped(move);
            case DROP -> dropped(move);
            default ->
                throw new IllegalArgumentException(
                        "move " + move + ": mode = " + graph.mode(move).word() + ", allowed sway, leap, drop");
        };
    }

    private Crossing swayed(int move, Carrier pole) {
        double stiffnessNPerM = graph.moves().stiffnessNPerM[move];
        double gapM = graph.gapM(move);
        double swingM = gapM - body.gapReachM();
        double widestM = sway.widestSwingM(body.massKg(), stiffnessNPerM, pole.swungM());
        if (swingM > widestM) {
            return new Crossing.Refused(
                    "the pole would have to swing " + swingM + " m, the body swings it " + widestM + " m");
        }
        return sway.across(body.massKg(), body.gapReachM(), gapM, stiffnessNPerM, pole.swungM(), pole.swungKg());
    }

    private Crossing leaped(int move) {
        double awayM = graph.lengthM(move);
        double radiiM = awayM - graph.gapM(move);
        double riseM = graph.riseM(move);
        double openM = Math.sqrt(Math.max(0, awayM * awayM - riseM * riseM)) - radiiM;
        if (openM <= body.gapReachM()) {
            return new Crossing.Refused("the gap of " + openM + " m is within reach");
        }
        double stiffnessNPerM = graph.moves().stiffnessNPerM[move];
        double sunkM = leap.sinkM(body, openM, riseM, stiffnessNPerM);
        return sunkM > body.gapReachM()
                ? new Crossing.Refused("the support would give way by " + sunkM + " m under the push")
                : leap.across(body, openM, riseM, stiffnessNPerM);
    }

    /**
     * The body lets itself down to the length of its arms before it falls. Nobody measured a landing; that the whole is not
     * cheaper than climbing down as far is an assumption, so that energy alone never makes an animal drop.
     */
    private Crossing dropped(int move) {
        double fallM = graph.lengthM(move) - body.overheadReachM();
        if (body.leapM() == 0 || fallM <= 0) {
            return new Crossing.Refused("the body does not drop so little, or at all");
        }
        Crossing fall = drop.down(body.massKg(), fallM);
        if (fall instanceof Crossing.Possible possible) {
            double descentJPerM = modes.jPerM(body, LocomotorMode.VERTICAL_DESCENT, -90);
            double loweringJ = descentJPerM * body.overheadReachM();
            double fallJ = Math.max(possible.energyJ(), descentJPerM * fallM);
            double loweringS = body.overheadReachM() / body.speeds().descendMPerS();
            return new Crossing.Possible(fallJ + loweringJ, possible.seconds() + loweringS);
        }
        return fall;
    }
}
