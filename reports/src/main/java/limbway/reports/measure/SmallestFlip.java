package limbway.reports.measure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import limbway.model.body.Body;
import limbway.model.explain.GroundReason;
import limbway.model.explain.flip.Flip;
import limbway.model.explain.flip.FlipAnswer;
import limbway.model.explain.flip.FlipKind;
import limbway.model.explain.flip.Flips;
import limbway.model.explain.flip.TripQuestion;
import limbway.model.graph.GraphSettings;
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
        return of(habitat, use.body(), use.from(), use.to(), OptionalInt.empty(), use.reason());
    }

    /**
     * The first change that turns trips between two places at a time of day.
     *
     * @param habitat where they were made
     * @param body who makes them
     * @param from name of the place where they start
     * @param to name of the place where they end
     * @param atSecond seconds after midnight, with doors as they are then; empty with all doors open that ever are
     * @param reason why they lead over the ground
     * @return a change, or empty if none was found soon
     */
    public static Optional<Flip> of(
            Habitat habitat, Body body, String from, String to, OptionalInt atSecond, GroundReason reason) {
        if (reason instanceof GroundReason.OffGroundIsCheapest) {
            return Optional.empty();
        }
        TripQuestion question = new TripQuestion(
                habitat.layout().enclosure(),
                GraphSettings.forBodies(habitat.bodies()),
                body,
                habitat.energy(),
                habitat.sharpness(),
                atSecond,
                from,
                to);
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
