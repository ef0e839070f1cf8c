package limbway.model.explain.flip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.explain.Gap;
import limbway.model.geometry.Point;

/** Makes a gap shorter: carries a free end on, or puts a pole nearer. */
final class GapSearch {

    private final ChangeTrial trial;
    private final Enclosure enclosure;

    GapSearch(ChangeTrial trial) {
        this.trial = trial;
        this.enclosure = trial.question().enclosure();
    }

    /** The least shortening of each kind that turns the trip; empty where none of them does. */
    List<Flip> find(Gap gap) {
        List<Flip> found = new ArrayList<>();
        for (Gap side : List.of(gap, gap.reversed())) {
            Optional<Support> member = Things.support(enclosure, side.from());
            member.flatMap(support -> change(support, side))
                    .flatMap(change -> least(change, side))
                    .ifPresent(found::add);
        }
        return found;
    }

    /** Whether one of both sides has a free end or can be moved. */
    boolean canChange(Gap gap) {
        return List.of(gap, gap.reversed()).stream().anyMatch(side -> Things.support(enclosure, side.from())
                .flatMap(support -> change(support, side))
                .isPresent());
    }

    private Optional<Change> change(Support support, Gap gap) {
        if (support.kind() == SupportKind.POLE) {
            boolean apart = gap.fromPlace().planDistanceM(gap.toPlace()) > Things.SAME_PLACE_M;
            return apart && PoleMoved.canMove(enclosure, support)
                    ? Optional.of(new PoleMoved(
                            support.id(),
                            support.axis().start(),
                            gap.toPlace().plus(support.axis().start().minus(gap.fromPlace())),
                            0))
                    : Optional.empty();
        }
        Point place = gap.fromPlace();
        boolean first = support.axis().start().distanceM(place) < Things.SAME_PLACE_M;
        boolean free = support.kind() != SupportKind.TRUNK
                && gap.fromAtEnd()
                && Things.isFree(enclosure, place, support.id())
                && !Things.carries(enclosure, support);
        return free ? Optional.of(new EndExtended(support.id(), first, place, gap.toPlace(), 0)) : Optional.empty();
    }

    private Optional<Flip> least(Change change, Gap gap) {
        double missingM = gap.clearM() - trial.question().body().gapReachM();
        return trial.flip(change.withAmount(Math.floor(gap.clearM() * 1000) / 1000))
                .map(works ->
                        new Threshold(trial).between(0, Optional.empty(), works, Math.ceil(missingM * 1000) / 1000));
    }
}
