package limbway.model.explain.flip;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import limbway.model.body.Body;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Segment;
import limbway.model.graph.Grasp;

/** Makes a support thinner that the body can neither hold nor walk on. */
final class ThinSearch {

    /** So many supports are tried, those nearest to the straight line of the trip first. */
    private static final int MOST_TRIED = 8;

    private final ChangeTrial trial;

    ThinSearch(ChangeTrial trial) {
        this.trial = trial;
    }

    /** The greatest thickness of one support at which the trip turns. */
    Optional<Flip> find() {
        Enclosure enclosure = trial.question().enclosure();
        Body body = trial.question().body();
        Segment straight = new Segment(
                Things.resource(enclosure, trial.question().from())
                        .orElseThrow()
                        .at(),
                Things.resource(enclosure, trial.question().to()).orElseThrow().at());
        List<Support> thick = enclosure.supports().stream()
                .filter(one -> !Grasp.canUse(body, one) && one.diameterM() > Grasp.thickestM(body, one))
                .sorted(Comparator.comparingDouble((Support one) -> awayM(one, straight))
                        .thenComparing(Support::id))
                .limit(MOST_TRIED)
                .toList();
        for (Support support : thick) {
            double heldM = Math.floor(Grasp.thickestM(body, support) * 1000 + 1e-6) / 1000;
            Change change = new Thinned(support.id(), support.diameterM(), support.diameterM() - heldM);
            Optional<Flip> works = trial.flip(change);
            if (works.isPresent()) {
                return works.map(flip -> new Threshold(trial).between(0, Optional.empty(), flip, Double.NaN));
            }
        }
        return Optional.empty();
    }

    private static double awayM(Support support, Segment straight) {
        return Math.min(
                Things.distanceM(support.axis(), straight.a()) + Things.distanceM(support.axis(), straight.b()),
                straight.distanceM(support.axis().start())
                        + straight.distanceM(support.axis().end()));
    }
}
