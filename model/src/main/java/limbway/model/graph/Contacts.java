package limbway.model.graph;

import limbway.model.geometry.ClosestApproach;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.geometry.SegmentGrid;

/**
 * Joins supports that come within reach of each other: at their closest approach, at the places opposite their ends,
 * where the gap is just what some body reaches, and from each hold of one to the nearest place of the other
 * and to the one at the same height.
 *
 * <p>What a pair gets depends on that pair alone, never on a third support.
 */
final class Contacts {

    private final Draft draft;

    private Contacts(Draft draft) {
        this.draft = draft;
    }

    static void connect(Draft draft) {
        Contacts contacts = new Contacts(draft);
        double thickestM =
                draft.pieces().stream().mapToDouble(Piece::radiusM).max().orElse(0);
        SegmentGrid.forEachNearPair(
                draft.pieces().stream().map(Piece::line).toList(),
                draft.widestGapM() + 2 * thickestM,
                contacts::connect);
    }

    private void connect(int first, int second) {
        Piece a = draft.pieces().get(first);
        Piece b = draft.pieces().get(second);
        if (a.names().stream().anyMatch(b.names()::contains)) {
            return;
        }
        ClosestApproach closest = ClosestApproach.of(a.line(), b.line());
        if (closest.distanceM() - a.radiusM() - b.radiusM() > draft.widestGapM()) {
            return;
        }
        join(first, closest.shareOnFirst(), second, closest.shareOnSecond());
        for (int end = 0; end <= 1; end++) {
            join(first, end, second, b.line().nearestShare(a.line().at(end)));
            join(first, a.line().nearestShare(b.line().at(end)), second, end);
        }
        joinAtReachLimits(first, closest.shareOnFirst(), second);
        joinAtReachLimits(second, closest.shareOnSecond(), first);
        joinNearestPlaces(first, second);
        joinNearestPlaces(second, first);
    }

    private void joinAtReachLimits(int first, double nearestShare, int second) {
        Segment line = draft.pieces().get(first).line();
        Segment other = draft.pieces().get(second).line();
        double radiiM =
                draft.pieces().get(first).radiusM() + draft.pieces().get(second).radiusM();
        double leastM = other.distanceM(line.at(nearestShare));
        for (double reachM : draft.reachesM()) {
            if (leastM <= reachM + radiiM) {
                for (double share : ReachLimit.shares(line, other, nearestShare, reachM + radiiM)) {
                    join(first, share, second, other.nearestShare(line.at(share)));
                }
            }
        }
    }

    private void joinNearestPlaces(int first, int second) {
        Segment line = draft.pieces().get(first).line();
        Segment other = draft.pieces().get(second).line();
        for (double share : draft.ownShares(first)) {
            Point place = line.at(share);
            join(first, share, second, other.nearestShare(place));
            double riseM = other.b().zM() - other.a().zM();
            double level = (place.zM() - other.a().zM()) / riseM;
            if (level > 0 && level < 1) {
                join(first, share, second, level);
            }
        }
    }

    private void join(int first, double share, int second, double otherShare) {
        Piece a = draft.pieces().get(first);
        Piece b = draft.pieces().get(second);
        if (draft.within(a.line().at(share), b.line().at(otherShare), a.radiusM() + b.radiusM())) {
            draft.join(first, share, draft.grip(second, otherShare));
        }
    }
}
