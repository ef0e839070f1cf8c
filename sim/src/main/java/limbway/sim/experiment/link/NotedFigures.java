package limbway.sim.experiment.link;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.body.Body;
import limbway.model.link.LinkCrossing;
import limbway.model.link.LinkEffect;
import limbway.model.link.WayCosts;

/** The effect of a link as a row of numbers, for a notebook. */
final class NotedFigures {

    private NotedFigures() {}

    static double[] of(LinkEffect effect) {
        double[] values =
                new double[length(effect.costs().size(), effect.crossings().size())];
        int next = 0;
        for (WayCosts costs : effect.costs()) {
            values[next++] = costs.offMilliJ();
            values[next++] = costs.overMilliJ();
        }
        for (LinkCrossing crossing : effect.crossings()) {
            values[next++] = crossing.thereMilliJ();
            values[next++] = crossing.backMilliJ();
        }
        values[next] = effect.local() ? 1 : 0;
        return values;
    }

    private static int length(int errands, int bodies) {
        return 2 * (errands + bodies) + 1;
    }

    /** Empty where the row is none of so many errands and bodies. */
    static Optional<LinkEffect> effect(double[] values, int errands, List<Body> bodies) {
        if (values.length != length(errands, bodies.size())) {
            return Optional.empty();
        }
        List<WayCosts> costs = new ArrayList<>();
        List<LinkCrossing> crossings = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < errands; i++) {
            costs.add(new WayCosts((int) values[next++], (int) values[next++]));
        }
        for (Body body : bodies) {
            crossings.add(new LinkCrossing(body, (int) values[next++], (int) values[next++]));
        }
        return Optional.of(new LinkEffect(costs, crossings, values[next] == 1));
    }
}
