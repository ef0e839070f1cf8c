package limbway.model.graph;

import java.util.ArrayList;
import java.util.List;

import limbway.model.body.Body;
import limbway.model.body.LocomotorMode;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.geometry.SegmentGrid;

/**
 * Leaps between supports and decks, over gaps that are wider than some leaping body's reach; a body that leaps no farther
 * than it reaches has no use for them.
 */
final class LeapWays {

    /** On what rises steeply the landing is sought so far below the take-off: the wider the gap, the deeper. */
    private static final double[] FALLS_M = {0, 1, 2, 4};

    private final Draft draft;
    private final List<Segment> lines = new ArrayList<>();
    private final List<Landing> landings = new ArrayList<>();
    private final double shortestM;
    private final double widestM;

    LeapWays(Draft draft, Decks decks) {
        this.draft = draft;
        for (int i = 0; i < draft.pieces().size(); i++) {
            lines.add(draft.pieces().get(i).line());
            landings.add(new Landing.OnPiece(draft, i));
        }
        for (int p = 0; p < decks.platforms().size(); p++) {
            for (Segment edge : decks.platforms().get(p).edges()) {
                lines.add(edge);
                landings.add(new Landing.OnDeck(decks, p));
            }
        }
        List<Body> leapers = draft.settings().bodies().stream()
                .filter(body -> body.leapM() > body.gapReachM()
                        && body.massKg() <= draft.settings().energy().leap().heaviestKg())
                .toList();
        shortestM = leapers.stream().mapToDouble(Body::gapReachM).min().orElse(0);
        widestM = leapers.stream().mapToDouble(Body::leapM).max().orElse(0);
    }

    void connect() {
        if (widestM > shortestM && !lines.isEmpty()) {
            // a leap down may be longer in space than in plan
            SegmentGrid.forEachNearPair(lines, 2 * widestM, this::connect);
        }
    }

    private void connect(int one, int other) {
        if (!isSameThing(one, other)) {
            leapFrom(one, other);
            leapFrom(other, one);
        }
    }

    private boolean isSameThing(int one, int other) {
        if (landings.get(one) instanceof Landing.OnPiece a && landings.get(other) instanceof Landing.OnPiece b) {
            return draft.pieces().get(a.piece()).names().stream()
                    .anyMatch(draft.pieces().get(b.piece()).names()::contains);
        }
        return landings.get(one).equals(landings.get(other));
    }

    private void leapFrom(int from, int to) {
        Segment line = lines.get(from);
        Segment other = lines.get(to);
        for (double share : Piece.evenShares(line, draft.settings().holdSpacingM())) {
            Point place = line.at(share);
            leapBetween(from, place, to, other.at(other.nearestShare(place)));
            for (double fallM : FALLS_M) {
                double level = (place.zM() - fallM - other.a().zM())
                        / (other.b().zM() - other.a().zM());
                if (level > 0 && level < 1) {
                    leapBetween(from, place, to, other.at(level));
                }
            }
        }
    }

    private void leapBetween(int from, Point place, int to, Point far) {
        double openM = place.planDistanceM(far);
        if (openM > shortestM && openM <= widestM + 1) {
            draft.moves()
                    .across(landings.get(from).grip(place), landings.get(to).grip(far), LocomotorMode.LEAP);
        }
    }
}
