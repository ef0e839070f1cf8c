package limbway.model.graph;

import java.util.ArrayList;
import java.util.List;

import limbway.model.body.Body;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.geometry.SegmentGrid;

/** Finds, for each nearly level piece of support, the pieces above it on which a hand can lie while the feet walk. */
final class HandRails {

    /** A rail lower above the feet than this is no use to a hand: an assumption, about the height of a juvenile's hip. */
    private static final double LOWEST_M = 0.5;

    private final Draft draft;
    private final List<List<Integer>> near = new ArrayList<>();

    HandRails(Draft draft) {
        this.draft = draft;
        List<Segment> lines = new ArrayList<>();
        for (Piece piece : draft.pieces()) {
            lines.add(piece.line());
            near.add(new ArrayList<>());
        }
        double reachM = draft.settings().bodies().stream()
                .mapToDouble(Body::overheadReachM)
                .max()
                .orElse(0);
        SegmentGrid.forEachNearPair(lines, reachM, (one, other) -> {
            note(one, other);
            note(other, one);
        });
    }

    private void note(int feet, int hand) {
        boolean walked = draft.pieces().get(feet).slopeDeg() <= Carrier.WALKWAY_SLOPE_DEG;
        if (walked
                && !draft.pieces()
                        .get(hand)
                        .names()
                        .equals(draft.pieces().get(feet).names())) {
            near.get(feet).add(hand);
        }
    }

    /** Adds the walks on two feet from one hold of a piece to the next, one for each rail that goes along with them. */
    void walk(int feet, int a, int b) {
        for (int rail : near.get(feet)) {
            Point from = draft.holds().place(a);
            Point to = draft.holds().place(b);
            double fromM = heightOf(rail, from);
            double toM = heightOf(rail, to);
            double halfM = heightOf(rail, new Segment(from, to).at(0.5));
            double handM = Math.max(halfM, Math.max(fromM, toM));
            if (Double.isFinite(handM)) {
                draft.moves().onTwoFeet(a, b, draft.carrier(feet), draft.carrier(rail), handM);
            }
        }
    }

    /** How far a rail is from the feet; infinite where it is not above them. */
    private double heightOf(int rail, Point feet) {
        Segment line = draft.pieces().get(rail).line();
        Point hand = line.at(line.nearestShare(feet));
        return hand.zM() - feet.zM() >= LOWEST_M ? hand.distanceM(feet) : Double.POSITIVE_INFINITY;
    }
}
