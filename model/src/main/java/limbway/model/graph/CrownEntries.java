package limbway.model.graph;

import java.util.List;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.ClosestApproach;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.geometry.UprightCylinder;

/**
 * Joins crowns with the supports and platforms that enter them or come within reach: holds that lie among the branches are
 * holds of the crown, others reach over to the nearest place of it.
 */
final class CrownEntries {

    private final Draft draft;
    private final Decks decks;
    private final Canopy canopy;

    CrownEntries(Draft draft, Decks decks, Canopy canopy) {
        this.draft = draft;
        this.decks = decks;
        this.canopy = canopy;
    }

    void connect() {
        for (int c = 0; c < crowns().size(); c++) {
            enterBySupports(c);
            enterByDecks(c);
        }
    }

    private List<Crown> crowns() {
        return draft.enclosure().crowns();
    }

    private void enterBySupports(int c) {
        UprightCylinder space = crowns().get(c).space();
        for (int i = 0; i < draft.pieces().size(); i++) {
            Piece piece = draft.pieces().get(i);
            double limitM = space.radiusM() + draft.widestGapM() + piece.radiusM();
            if (piece.stock().kind() == SupportKind.TRUNK
                    || ClosestApproach.of(piece.line(), space.axis()).distanceM() > limitM) {
                continue;
            }
            double nearest = space.nearestShare(piece.line());
            // where the piece enters the branches; not where it comes nearest, which for a piece beside them is no one
            // place
            for (double share :
                    ReachLimit.shares(s -> space.distanceM(piece.line().at(s)), nearest, 0)) {
                enterFrom(c, i, share);
            }
            for (double share : draft.ownShares(i)) {
                enterFrom(c, i, share);
            }
            for (double reachM : draft.reachesM()) {
                for (double share : ReachLimit.shares(
                        s -> space.distanceM(piece.line().at(s)), nearest, reachM + piece.radiusM())) {
                    enterFrom(c, i, share);
                }
            }
        }
    }

    private void enterFrom(int c, int i, double share) {
        Crown crown = crowns().get(c);
        Piece piece = draft.pieces().get(i);
        Point place = piece.line().at(share);
        if (Canopy.covers(crown, place)) {
            canopy.include(c, draft.holdOn(i, share));
            return;
        }
        Point among = crown.space().nearestTo(place);
        if (draft.within(place, among, piece.radiusM())) {
            draft.join(i, share, draft.branch(canopy.holdIn(c, among)));
        }
    }

    private void enterByDecks(int c) {
        UprightCylinder space = crowns().get(c).space();
        for (int p = 0; p < decks.platforms().size(); p++) {
            Platform deck = decks.platforms().get(p);
            Point beside = space.nearestTo(crowns().get(c).foot().atHeight(deck.zM()));
            enterFromDeck(c, p, deck.nearestTo(beside));
            for (Segment edge : deck.edges()) {
                double nearest = space.nearestShare(edge);
                for (double share : Piece.evenShares(edge, draft.settings().holdSpacingM())) {
                    enterFromDeck(c, p, edge.at(share));
                }
                for (double reachM : draft.reachesM()) {
                    for (double share : ReachLimit.shares(s -> space.distanceM(edge.at(s)), nearest, reachM)) {
                        enterFromDeck(c, p, edge.at(share));
                    }
                }
            }
        }
    }

    private void enterFromDeck(int c, int p, Point place) {
        Crown crown = crowns().get(c);
        if (Canopy.covers(crown, place)) {
            canopy.include(c, decks.holdAt(p, place));
            return;
        }
        Point among = crown.space().nearestTo(place);
        if (draft.within(place, among, 0)) {
            draft.moves().over(decks.grip(p, place), draft.branch(canopy.holdIn(c, among)));
        }
    }
}
