package limbway.model.shade;

import java.util.List;

import limbway.model.geometry.Point;

/** Tries roofs over one deck against what is missing at the moments of breach. */
final class RoofTrial {

    private final double[][] a;
    private final double[][] b;
    private final double[][] above;
    private final RoofDemand[] demands;
    private final double[] runA;
    private final double[] runB;

    /** Places of the demands, those that last turned a roof down first: most roofs fail at the first that is asked. */
    private final int[] order;

    RoofTrial(DeckFrame frame, List<List<Point>> points, List<RoofDemand> missing) {
        a = new double[points.size()][];
        b = new double[points.size()][];
        above = new double[points.size()][];
        for (int platform = 0; platform < points.size(); platform++) {
            List<Point> on = points.get(platform);
            a[platform] = on.stream().mapToDouble(p -> frame.a(p.xM(), p.yM())).toArray();
            b[platform] = on.stream().mapToDouble(p -> frame.b(p.xM(), p.yM())).toArray();
            above[platform] = on.stream().mapToDouble(p -> p.zM() - frame.zM()).toArray();
        }
        demands = missing.toArray(RoofDemand[]::new);
        runA = new double[demands.length];
        runB = new double[demands.length];
        order = new int[demands.length];
        for (int i = 0; i < demands.length; i++) {
            runA[i] = frame.turnedA(demands[i].runEast(), demands[i].runNorth());
            runB[i] = frame.turnedB(demands[i].runEast(), demands[i].runNorth());
            order[i] = i;
        }
    }

    /** Whether a roof ends the breach at every moment. */
    boolean endsAll(RoofPlan plan) {
        for (int i = 0; i < order.length; i++) {
            int demand = order[i];
            if (!ends(plan, demand)) {
                System.arraycopy(order, 0, order, 1, i);
                order[0] = demand;
                return false;
            }
        }
        return true;
    }

    /** Number of moments at which the breach stays. */
    int left(RoofPlan plan) {
        int left = 0;
        for (int demand = 0; demand < demands.length; demand++) {
            left += ends(plan, demand) ? 0 : 1;
        }
        return left;
    }

    /** Whether a roof ends the breach at one moment. */
    boolean ends(RoofPlan plan, int demand) {
        int wanted = demands[demand].wanted();
        for (RoofDemand.OpenDeck open : demands[demand].open()) {
            if (covers(plan, demand, open) && --wanted == 0) {
                return true;
            }
        }
        return false;
    }

    private boolean covers(RoofPlan plan, int demand, RoofDemand.OpenDeck open) {
        int missing = open.missing();
        int deck = open.platform();
        for (int i = 0; i < open.litCount() && missing <= open.litCount() - i; i++) {
            int point = open.lit(i);
            if (plan.shades(a[deck][point], b[deck][point], above[deck][point], runA[demand], runB[demand])
                    && --missing == 0) {
                return true;
            }
        }
        return missing <= 0;
    }
}
