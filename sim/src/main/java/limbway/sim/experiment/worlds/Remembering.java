package limbway.sim.experiment.worlds;

import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;

/** A model that is not asked the same thing twice. */
final class Remembering implements WorldModel {

    private record Asked(Map<String, Double> values, int first, int count) {}

    private final WorldModel model;
    private final Map<Asked, Lived> known = new ConcurrentHashMap<>();

    Remembering(WorldModel model) {
        this.model = model;
    }

    @Override
    public Lived live(Map<String, Double> values, int first, int count, BooleanSupplier stop) {
        Asked asked = new Asked(new TreeMap<>(values), first, count);
        Lived found = known.get(asked);
        if (found == null) {
            found = model.live(values, first, count, stop);
            if (!(found instanceof Lived.GivenUp)) {
                known.put(asked, found);
            }
        }
        return found;
    }
}
