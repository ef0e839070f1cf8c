package limbway.model.explain.flip;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import limbway.model.alteration.Alteration;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Support;
import limbway.model.graph.FreeSpace;

/** Makes changes, compiles what comes of them, and counts how much was compiled. */
final class ChangeTrial {

    private final TripQuestion question;
    private final BuildLimits limits;
    private final long holdsAllowed;
    private final int holdsInOne;
    private int compiled;

    /**
     * Sets up trials.
     *
     * @param holdsInOne holds of the layout as it is, by which the work is measured
     * @param holdsAllowed how many holds may be compiled in all
     */
    ChangeTrial(TripQuestion question, BuildLimits limits, int holdsInOne, long holdsAllowed) {
        this.question = question;
        this.limits = limits;
        this.holdsInOne = Math.max(1, holdsInOne);
        this.holdsAllowed = holdsAllowed;
    }

    TripQuestion question() {
        return question;
    }

    int compiled() {
        return compiled;
    }

    /** Whether so many more layouts may be compiled. */
    boolean canAfford(int layouts) {
        return (long) (compiled + layouts) * holdsInOne <= holdsAllowed;
    }

    /** The flip that a change is, if it can be built and turns the trip. */
    Optional<Flip> flip(Change change) {
        return cost(change).filter(TripCost::isOffGround).map(cost -> flip(change, cost));
    }

    /** The flip that a change is, which turns the trip. */
    Flip flip(Change change, TripCost cost) {
        return new Flip(change, change.in(question.enclosure()).orElseThrow(), cost, cost.share(question.sharpness()));
    }

    /** What the trip costs with a change; empty if that cannot be built, or nothing more may be compiled. */
    Optional<TripCost> cost(Change change) {
        if (!canAfford(1)) {
            return Optional.empty();
        }
        Optional<Enclosure> changed = built(change);
        if (changed.isPresent()) {
            compiled++;
        }
        return changed.map(question::in);
    }

    /** The layout with a change, if it may be built so. */
    private Optional<Enclosure> built(Change change) {
        Optional<List<Alteration>> alterations = change.in(question.enclosure());
        if (alterations.isEmpty()) {
            return Optional.empty();
        }
        Enclosure changed = question.enclosure();
        Set<String> subjects = new TreeSet<>();
        for (Alteration alteration : alterations.get()) {
            changed = alteration.applyTo(changed);
            subjects.add(alteration.subject());
        }
        return isFree(changed, subjects, change) && limits.allow(changed, subjects)
                ? Optional.of(changed)
                : Optional.empty();
    }

    private boolean isFree(Enclosure changed, Set<String> subjects, Change change) {
        if (change instanceof Thinned || change instanceof PlaceMoved) {
            return true;
        }
        FreeSpace space = new FreeSpace(question.enclosure());
        for (String id : subjects) {
            Optional<Support> line = Things.support(changed, id);
            if (line.isPresent() && !space.holds(line.get().axis())) {
                return false;
            }
        }
        return true;
    }
}
