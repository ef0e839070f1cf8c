package limbway.reports.measure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import limbway.model.explain.GroundReason;
import limbway.model.explain.flip.Flip;
import limbway.model.explain.flip.FlipAnswer;
import limbway.model.explain.flip.FlipKind;
import limbway.model.explain.flip.Flips;
import limbway.model.explain.flip.TripQuestion;
import limbway.sim.habitat.Habitat;

/** One change that would turn trips which used the ground, found within a second or so. */
public final class SmallestFlip {

    /** What is tried first costs the keeper least. */
    private static final List<FlipKind> ORDER =
            List.of(FlipKind.GAP, FlipKind.THINNER, FlipKind.LINK, FlipKind.DETOUR, FlipKind.END);

    /** So many holds are compiled for each kind at the most. Assumption. */
    private static final long HOLDS_ALLOWED = 30_000;

    private SmallestFlip() {}

    /**
     * The first change that turns trips between two places.
     *
     * @param habitat where they were made
     * @param use the trips
     * @return a change, or empty if none was found soon
     */
    public static Optional<Flip> of(Habitat habitat, PairUse use) {
        TripExplainer explainer = new TripExplainer(habitat, use.body(), OptionalInt.empty());
        return of(habitat, explainer.question(use.from(), use.to()), use.reason());
    }

    /**
     * The first change that turns trips.
     *
     * @param habitat where they were made
     * @param question which trips
     * @param reason why they lead over the ground
     * @return a change, or empty if none was found soon
     */
    public static Optional<Flip> of(Habitat habitat, TripQuestion question, GroundReason reason) {
        if (reason instanceof GroundReason.OffGroundIsCheapest) {
            return Optional.empty();
        }
        SafeBuilding limits = new SafeBuilding(habitat.layout().enclosure(), habitat.bodies());
        for (FlipKind kind : ORDER) {
            FlipAnswer answer = Flips.find(question, habitat.graph(), reason, limits, Set.of(kind), HOLDS_ALLOWED);
            if (!answer.flips().isEmpty()) {
                return Optional.of(answer.flips().get(0));
            }
        }
        return Optional.empty();
    }
}
