package limbway.sim.day;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.sim.journal.Stock;

/** What lies at the food places. Nothing spoils and nobody clears away: what is left in the evening is there next day. */
class Larder {

    private final double[] deliveredJ;
    private final double[] eatenJ;
    private final double[] leftJ;

    Larder(int resources) {
        deliveredJ = new double[resources];
        eatenJ = new double[resources];
        leftJ = new double[resources];
    }

    void deliver(int resource, double joule) {
        deliveredJ[resource] += joule;
        leftJ[resource] += joule;
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
