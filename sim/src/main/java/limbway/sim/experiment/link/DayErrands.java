package limbway.sim.experiment.link;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.body.Body;
import limbway.model.link.Errand;
import limbway.sim.experiment.Outcome;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Trip;

/** The trips of a run as errands: how often each body goes from each hold to each resource. */
final class DayErrands {

    private record Key(int body, int hold, int resource) {}

    private DayErrands() {}

    /** Errands in order of body, hold and resource. */
    static List<Errand> of(Outcome outcome) {
        Habitat habitat = outcome.habitat();
        List<Body> bodies = habitat.bodies();
        Map<Key, double[]> sums = new LinkedHashMap<>();
        for (Journal journal : outcome.journals()) {
            for (Trip trip : journal.trips()) {
                Body body = habitat.animals().get(trip.animal()).body();
                Key key = new Key(bodies.indexOf(body), trip.way().holds().get(0), trip.toResource());
                double[] sum = sums.computeIfAbsent(key, k -> new double[2]);
                sum[0]++;
                sum[1] += trip.way().lengthM();
            }
        }
        double days = (double) outcome.journals().size() * outcome.settings().days();
        List<Key> keys = new ArrayList<>(sums.keySet());
        keys.sort((a, b) -> a.body != b.body
                ? Integer.compare(a.body, b.body)
                : a.hold != b.hold ? Integer.compare(a.hold, b.hold) : Integer.compare(a.resource, b.resource));
        List<Errand> errands = new ArrayList<>();
        for (Key key : keys) {
            double[] sum = sums.get(key);
            errands.add(new Errand(bodies.get(key.body), key.hold, key.resource, sum[0] / days, sum[1] / days));
        }
        return errands;
    }
}
