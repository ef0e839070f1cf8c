package limbway.sim.day;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.sim.food.GainCurve;
import limbway.sim.journal.Stock;

/**
 * What lies at the food places, and how it was put out. Nothing spoils and nobody clears away: what is left in the evening
 * is there next day.
 *
 * <p>Each place is as its last delivery made it: what was left is put out anew with it, so that the speed of eating falls
 * with the share that is left of all that lay there then.
 */
class Larder {

    private final double[] deliveredJ;
    private final double[] eatenJ;
    private final double[] leftJ;
    private final double[] putOutJ;
    private final long[] handlingMs;
    private final GainCurve[] curves;

    Larder(int resources) {
        deliveredJ = new double[resources];
        eatenJ = new double[resources];
        leftJ = new double[resources];
        putOutJ = new double[resources];
        handlingMs = new long[resources];
        curves = new GainCurve[resources];
        Arrays.fill(curves, GainCurve.STEADY);
    }

    void deliver(Delivery.Portion portion) {
        int resource = portion.resource();
        deliveredJ[resource] += portion.joule();
        leftJ[resource] += portion.joule();
        putOutJ[resource] = leftJ[resource];
        handlingMs[resource] = portion.handlingMs();
        curves[resource] = GainCurve.of(portion.method());
    }

    /** What lay there when food was put out last, 0 before that. */
    double putOutJ(int resource) {
        return putOutJ[resource];
    }

    /** Time that each portion costs before it can be eaten [ms]. */
    long handlingMs(int resource) {
        return handlingMs[resource];
    }

    /** How fast it can be eaten as it grows less. */
    GainCurve curve(int resource) {
        return curves[resource];
    }

    /** Takes food in hand, at most what is there; it counts as eaten from now on. */
    double take(int resource, double atMostJ) {
        double joule = Math.min(atMostJ, leftJ[resource]);
        leftJ[resource] -= joule;
        eatenJ[resource] += joule;
        return joule;
    }

    /** Counts from now on; what lies there counts as put out. */
    void restart() {
        System.arraycopy(leftJ, 0, deliveredJ, 0, leftJ.length);
        Arrays.fill(eatenJ, 0);
    }

    /** Puts back what was taken in hand and not eaten. */
    void putBack(int resource, double joule) {
        leftJ[resource] += joule;
        eatenJ[resource] -= joule;
        // food put out while this was in hand counts with it
        putOutJ[resource] = Math.max(putOutJ[resource], leftJ[resource]);
    }

    double leftJ(int resource) {
        return leftJ[resource];
    }

    /** Accounts of the food places, in the order of the resources. */
    List<Stock> stocks(List<Resource> resources) {
        List<Stock> stocks = new ArrayList<>();
        for (int r = 0; r < leftJ.length; r++) {
            if (resources.get(r).kind() == ResourceKind.FOOD) {
                stocks.add(new Stock(r, deliveredJ[r], eatenJ[r], leftJ[r]));
            }
        }
        return stocks;
    }
}
