package limbway.model.graph;

import java.util.BitSet;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Platform;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/**
 * Holds of a graph that exists, met again while what was built on is compiled.
 *
 * <p>They divide pieces, decks and crowns as they do in that graph, so that a new hold is joined with each of them; the
 * ways between two of them on the ground, over a deck or through a crown are there already and are left out.
 */
final class KnownHolds {

    /** Where nothing exists yet. */
    static final KnownHolds NONE = new KnownHolds();

    /** A place counts as on a deck or in a crown within this much, for rounding [m]. */
    private static final double ON_M = 1e-6;

    private final BitSet onDecks = new BitSet();
    private final BitSet inCrowns = new BitSet();
    private final BitSet onGround = new BitSet();

    private KnownHolds() {}

    /** Puts the holds of a graph on everything of a draft on which they lie. */
    static KnownHolds of(RouteGraph graph, Draft draft, Decks decks, Canopy canopy, GroundWays ground) {
        KnownHolds holds = new KnownHolds();
        for (int hold = 0; hold < graph.holdCount(); hold++) {
            holds.meet(graph, hold, draft, decks, canopy);
            if (graph.isWalkedFrom(hold)) {
                holds.onGround.set(ground.holdAt(graph.place(hold)));
            }
        }
        return holds;
    }

    /** Whether both are known as holds of a deck. */
    boolean bothOnDecks(int one, int other) {
        return onDecks.get(one) && onDecks.get(other);
    }

    /** Whether both are known as holds of a crown. */
    boolean bothInCrowns(int one, int other) {
        return inCrowns.get(one) && inCrowns.get(other);
    }

    /** Whether both are known as places of the ground. */
    boolean bothOnGround(int one, int other) {
        return onGround.get(one) && onGround.get(other);
    }

    private void meet(RouteGraph graph, int hold, Draft draft, Decks decks, Canopy canopy) {
        Point place = graph.place(hold);
        for (int i = 0; i < draft.pieces().size(); i++) {
            Segment line = draft.pieces().get(i).line();
            double share = line.nearestShare(place);
            if (line.at(share).distanceM(place) <= Pieces.SAME_PLACE_M) {
                draft.holdOn(i, share);
            }
        }
        for (int p = 0; p < decks.platforms().size(); p++) {
            Platform deck = decks.platforms().get(p);
            boolean level = Math.abs(deck.zM() - place.zM()) <= ON_M;
            if (level && deck.nearestTo(place).distanceM(place) <= ON_M) {
                onDecks.set(decks.holdAt(p, place));
            }
        }
        if (graph.isAmongBranches(hold)) {
            for (int c = 0; c < draft.enclosure().crowns().size(); c++) {
                Crown crown = draft.enclosure().crowns().get(c);
                if (crown.space().distanceM(place) <= ON_M) {
                    inCrowns.set(canopy.holdIn(c, place));
                }
            }
        }
    }
}
