package limbway.model.link;

import java.util.ArrayList;
import java.util.List;

import limbway.model.geometry.Point;
import limbway.model.graph.RouteGraph;

/**
 * Where errands begin after something was altered: at the same hold or, where that is gone or its place is elsewhere, at the
 * nearest hold from which the place is used then.
 */
final class Starts {

    private final RouteGraph before;
    private final RouteGraph after;
    private final HoldsByPlace places;

    /** The resources must be the same ones in the same order. */
    Starts(RouteGraph before, RouteGraph after) {
        this.before = before;
        this.after = after;
        this.places = new HoldsByPlace(after);
    }

    /** A hold of the altered enclosure, or {@link HoldsByPlace#NONE} where nothing is left to start from. */
    int of(int hold) {
        Point place = before.place(hold);
        List<Integer> used = usedFrom(hold);
        boolean stays = used.isEmpty() || used.stream().anyMatch(this::isWhereItWas);
        int same = stays ? places.at(place) : HoldsByPlace.NONE;
        if (same != HoldsByPlace.NONE) {
            return same;
        }
        int best = HoldsByPlace.NONE;
        double bestM = Double.POSITIVE_INFINITY;
        for (int resource : used) {
            for (int other : after.useHolds(resource)) {
                double awayM = after.place(other).distanceM(place);
                if (awayM < bestM) {
                    best = other;
                    bestM = awayM;
                }
            }
        }
        return best != HoldsByPlace.NONE ? best : places.nearest(place, before.support(hold));
    }

    private List<Integer> usedFrom(int hold) {
        List<Integer> used = new ArrayList<>();
        for (int resource = 0; resource < before.resources().size(); resource++) {
            for (int from : before.useHolds(resource)) {
                if (from == hold) {
                    used.add(resource);
                }
            }
        }
        return used;
    }

    private boolean isWhereItWas(int resource) {
        return before.resources()
                .get(resource)
                .at()
                .equals(after.resources().get(resource).at());
    }
}
