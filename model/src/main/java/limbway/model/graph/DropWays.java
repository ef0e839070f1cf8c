package limbway.model.graph;

import java.util.List;

import limbway.model.body.Body;
import limbway.model.body.LocomotorMode;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/** Drops from supports and decks to what lies straight below: the next deck or the ground. */
final class DropWays {

    private final Draft draft;
    private final Decks decks;
    private final GroundWays ground;
    private final double deepestM;
    private final double shortestM;

    DropWays(Draft draft, Decks decks, GroundWays ground) {
        this.draft = draft;
        this.decks = decks;
        this.ground = ground;
        List<Body> droppers = draft.settings().bodies().stream()
                .filter(body -> body.leapM() > 0
                        && body.massKg() <= draft.settings().energy().leap().heaviestKg())
                .toList();
        shortestM = droppers.stream().mapToDouble(Body::overheadReachM).min().orElse(0);
        deepestM = droppers.stream()
                .mapToDouble(body ->
                        body.overheadReachM() + draft.settings().energy().leap().deepestDropM())
                .max()
                .orElse(0);
    }

    void connect() {
        if (deepestM == 0) {
            return;
        }
        for (int i = 0; i < draft.pieces().size(); i++) {
            Piece piece = draft.pieces().get(i);
            for (double share : draft.ownShares(i)) {
                Point place = piece.line().at(share);
                if (!piece.isSteep() || place.equals(piece.lowerEnd())) {
                    dropFrom(draft.grip(i, share), place);
                }
            }
        }
        for (int p = 0; p < decks.platforms().size(); p++) {
            for (Segment edge : decks.platforms().get(p).edges()) {
                for (double share : Piece.evenShares(edge, draft.settings().holdSpacingM())) {
                    dropFrom(decks.grip(p, edge.at(share)), edge.at(share));
                }
            }
        }
    }

    private void dropFrom(Grip held, Point place) {
        int below = -1;
        for (int p = 0; p < decks.platforms().size(); p++) {
            double zM = decks.platforms().get(p).zM();
            boolean under = zM < place.zM() - Pieces.SAME_PLACE_M
                    && decks.platforms().get(p).outline().covers(place.xM(), place.yM());
            if (under && (below < 0 || zM > decks.platforms().get(below).zM())) {
                below = p;
            }
        }
        double groundZM = place.zM() - ground.heightM(place);
        double landingZM = below < 0 ? groundZM : decks.platforms().get(below).zM();
        double fallM = place.zM() - landingZM;
        if (fallM <= shortestM || fallM > deepestM || (below < 0 && !ground.covers(place))) {
            return;
        }
        Grip landing = below < 0
                ? Grip.rigid(ground.holdAt(place), Carrier.SURFACE)
                : decks.grip(below, place.atHeight(landingZM));
        draft.moves().across(held, landing, LocomotorMode.DROP);
    }
}
