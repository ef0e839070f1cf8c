package limbway.model.graph;

import limbway.model.geometry.ClosestApproach;
import limbway.model.geometry.Segment;
import limbway.model.geometry.SegmentGrid;

/**
 * Joins supports that come within reach of each other: at their closest approach, at the places opposite their ends, and
 * from each hold of one to the nearest hold of the other.
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
                draft.settings().widestGapM() + 2 * thickestM,
                contacts::connect);
    }

    private void connect(int first, int second) {
        Piece a = draft.pieces().get(first);
        Piece b = draft.pieces().get(second);
        if (a.names().stream().anyMatch(b.names()::contains)) {
            return;
        }
        ClosestApproach closest = ClosestApproach.of(a.line(), b.line());
        if (closest.distanceM() - a.radiusM() - b.radiusM() > draft.settings().widestGapM()) {
            return;
        }
        join(first, closest.shareOnFirst(), second, closest.shareOnSecond());
        for (int end = 0; end <= 1; end++) {
            join(first, end, second, b.line().nearestShare(a.line().at(end)));
            join(first, a.line().nearestShare(b.line().at(end)), second, end);
        }
        joinNearestHolds(first, second);
        joinNearestHolds(second, first);
    }

    private void joinNearestHolds(int first, int second) {
        Segment line = draft.pieces().get(first).line();
        Segment other = draft.pieces().get(second).line();
        double[] targets = draft.ownShares(second);
        for (double share : draft.ownShares(first)) {
            double place = other.nearestShare(line.at(share)) * (targets.length - 1);
            // half-way between two holds both are nearest: taking both keeps mirrored enclosures alike
            int low = (int) Math.ceil(place - 0.5 - 1e-9);
            int high = (int) Math.floor(place + 0.5 + 1e-9);
            for (int k = low; k <= high; k++) {
                join(first, share, second, targets[k]);
            }
        }
    }

    private void join(int first, double share, int second, double otherShare) {
        Piece a = draft.pieces().get(first);
        Piece b = draft.pieces().get(second);
        if (draft.within(a.line().at(share), b.line().at(otherShare), a.radiusM() + b.radiusM())) {
            draft.join(first, share, draft.holdOn(second, otherShare), draft.carrier(second), b.radiusM());
        }
    }
}
