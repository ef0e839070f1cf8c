package limbway.model.graph;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.PlatformKind;
import limbway.model.geometry.ClosestApproach;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/** Joins platforms with the supports and platforms around them, and lets animals walk on them in any direction. */
final class Decks {

    private final Draft draft;
    private final List<Platform> platforms;
    private final List<Set<Integer>> holdsOn = new ArrayList<>();
    private final List<Carrier> carriers = new ArrayList<>();

    Decks(Draft draft) {
        this.draft = draft;
        this.platforms = draft.enclosure().platforms();
        for (Platform platform : platforms) {
            Set<Integer> own = new LinkedHashSet<>();
            for (Corner corner : platform.outline().corners()) {
                own.add(draft.holds().at(corner.atHeight(platform.zM()), platform.id()));
            }
            holdsOn.add(own);
            carriers.add(Carrier.surface(platform.bearsKg().orElse(Double.POSITIVE_INFINITY)));
        }
    }

    void connect() {
        for (int p = 0; p < platforms.size(); p++) {
            for (int i = 0; i < draft.pieces().size(); i++) {
                connectPiece(p, i);
            }
            for (int q = 0; q < platforms.size(); q++) {
                if (q != p) {
                    connectDecks(p, q);
                }
            }
        }
    }

    List<Platform> platforms() {
        return platforms;
    }

    int holdAt(int platform, Point p) {
        int hold = draft.holds().at(p, platforms.get(platform).id());
        holdsOn.get(platform).add(hold);
        return hold;
    }

    /** A place on a deck as one end of a move. */
    Grip grip(int platform, Point p) {
        double givesNPerM = platforms.get(platform).kind() == PlatformKind.HAMMOCK
                ? draft.settings().hammockNPerM()
                : Stiffness.RIGID;
        return new Grip(holdAt(platform, p), carriers.get(platform), 0, givesNPerM);
    }

    /** Adds the walks between all holds of each platform but those that are there already; call after every hold is known. */
    void addWalks(KnownHolds known) {
        for (int p = 0; p < platforms.size(); p++) {
            OpenPlan plan = new OpenPlan(platforms.get(p).outline(), List.of());
            List<Integer> holds = new ArrayList<>(holdsOn.get(p));
            for (int i = 0; i < holds.size(); i++) {
                for (int j = i + 1; j < holds.size(); j++) {
                    if (!known.bothOnDecks(holds.get(i), holds.get(j))
                            && plan.sees(
                                    draft.holds().place(holds.get(i)),
                                    draft.holds().place(holds.get(j)))) {
                        draft.moves()
                                .along(
                                        holds.get(i),
                                        holds.get(j),
                                        LocomotorMode.QUADRUPEDAL_WALK,
                                        false,
                                        carriers.get(p));
                    }
                }
            }
        }
    }

    private void connectPiece(int p, int i) {
        Piece piece = draft.pieces().get(i);
        Platform platform = platforms.get(p);
        boolean through = passThrough(p, i);
        if (through && piece.isSteep()) {
            return;
        }
        for (double share : draft.ownShares(i)) {
            Point place = piece.line().at(share);
            join(p, i, share, platform.grasped(place));
        }
        for (Segment edge : platform.edges()) {
            ClosestApproach closest = ClosestApproach.of(piece.line(), edge);
            join(p, i, closest.shareOnFirst(), edge.at(closest.shareOnSecond()));
            for (double reachM : draft.reachesM()) {
                double limitM = reachM + piece.radiusM();
                for (double share : ReachLimit.shares(
                        s -> platform.nearestTo(piece.line().at(s))
                                .distanceM(piece.line().at(s)),
                        closest.shareOnFirst(),
                        limitM)) {
                    join(p, i, share, platform.grasped(piece.line().at(share)));
                }
                if (piece.lowerEnd().zM() < platform.zM()) {
                    for (double share : ReachLimit.shares(
                            s -> edge.distanceM(piece.line().at(s)), closest.shareOnFirst(), limitM)) {
                        join(p, i, share, edge.at(edge.nearestShare(piece.line().at(share))));
                    }
                }
            }
        }
    }

    /** Where a piece passes through the deck, its hold is a hold of the deck. */
    private boolean passThrough(int p, int i) {
        Segment line = draft.pieces().get(i).line();
        double riseM = line.b().zM() - line.a().zM();
        double share = (platforms.get(p).zM() - line.a().zM()) / riseM;
        double slack = Pieces.SAME_PLACE_M / Math.abs(riseM);
        if (riseM == 0 || !(share >= -slack && share <= 1 + slack)) {
            return false;
        }
        double inside = Math.max(0, Math.min(1, share));
        Point place = line.at(inside);
        if (!platforms.get(p).outline().covers(place.xM(), place.yM())) {
            return false;
        }
        holdsOn.get(p).add(draft.holdOn(i, inside));
        return true;
    }

    private void join(int p, int i, double share, Point onDeck) {
        Piece piece = draft.pieces().get(i);
        if (draft.within(piece.line().at(share), onDeck, piece.radiusM())) {
            draft.join(i, share, grip(p, onDeck));
        }
    }

    /** From everywhere along the edges of one deck to the nearest place of another, as from the edge of a deck to the ground. */
    private void connectDecks(int p, int q) {
        Platform one = platforms.get(p);
        Platform other = platforms.get(q);
        if (Math.abs(one.zM() - other.zM()) > draft.widestGapM()) {
            return;
        }
        for (Segment edge : one.edges()) {
            for (double share : Piece.evenShares(edge, draft.settings().holdSpacingM())) {
                joinDecks(p, edge.at(share), q);
            }
            for (Segment otherEdge : other.edges()) {
                ClosestApproach closest = ClosestApproach.of(edge, otherEdge);
                joinDecks(p, edge.at(closest.shareOnFirst()), q);
                for (double reachM : draft.reachesM()) {
                    for (double share :
                            ReachLimit.shares(s -> otherEdge.distanceM(edge.at(s)), closest.shareOnFirst(), reachM)) {
                        joinDecks(p, edge.at(share), q);
                    }
                }
            }
        }
    }

    private void joinDecks(int p, Point from, int q) {
        Point to = platforms.get(q).grasped(from);
        if (draft.within(from, to, 0)) {
            draft.moves().over(grip(p, from), grip(q, to));
        }
    }
}
