package limbway.model.graph;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Platform;
import limbway.model.geometry.Point;

/** Moves as they are found, each once. */
final class MoveList {

    /**
     * One move.
     *
     * @param from hold it starts at
     * @param to hold it ends at
     * @param mode how
     * @param onGround whether the animal walks on the ground, steps between ground and support, or stands on the ground at
     *     both ends
     * @param gapM clear distance reached over [m], 0 where nothing is
     * @param first carrier it leaves
     * @param second carrier it enters
     */
    record Move(int from, int to, LocomotorMode mode, boolean onGround, double gapM, Carrier first, Carrier second) {

        Move grounded() {
            return new Move(from, to, mode, true, gapM, first, second);
        }

        Move reversed(LocomotorMode reverseMode) {
            return new Move(to, from, reverseMode, onGround, gapM, second, first);
        }
    }

    /** A support touched within this distance needs no reaching over. */
    private static final double TOUCH_M = 0.02;

    private final Set<Move> moves = new LinkedHashSet<>();
    private final HoldTable holds;
    private final List<Platform> decks;

    MoveList(HoldTable holds, List<Platform> decks) {
        this.holds = holds;
        this.decks = decks;
    }

    List<Move> all() {
        return new ArrayList<>(moves);
    }

    /** Both directions along one carrier, in one mode. */
    void along(int a, int b, LocomotorMode mode, boolean onGround, Carrier carrier) {
        add(new Move(a, b, mode, onGround, 0, carrier, carrier), mode);
    }

    /** Both directions up and down a steep carrier. */
    void climb(int a, int b, Carrier carrier) {
        boolean up = holds.place(b).zM() >= holds.place(a).zM();
        int low = up ? a : b;
        int high = up ? b : a;
        add(
                new Move(low, high, LocomotorMode.VERTICAL_CLIMB, false, 0, carrier, carrier),
                LocomotorMode.VERTICAL_DESCENT);
    }

    /**
     * Both directions over a gap between two carriers, whose surfaces lie the given radii from the holds; none where a deck
     * is in the way.
     */
    void over(int a, Carrier first, int b, Carrier second, double radiiM) {
        Point from = holds.place(a);
        Point to = holds.place(b);
        if (a == b || decks.stream().anyMatch(deck -> deck.blocks(from, to))) {
            return;
        }
        double gapM = Math.max(0, from.distanceM(to) - radiiM);
        boolean onGround = (first.standing() && holds.onGround(a)) || (second.standing() && holds.onGround(b));
        boolean touching = gapM <= TOUCH_M;
        LocomotorMode mode = touching ? LocomotorMode.CLAMBER : LocomotorMode.BRIDGE;
        add(new Move(a, b, mode, onGround, touching ? 0 : gapM, first, second), mode);
        if (touching && first.equals(second) && first.isWalkway()) {
            along(a, b, LocomotorMode.QUADRUPEDAL_WALK, onGround, first);
        }
    }

    private void add(Move move, LocomotorMode reverseMode) {
        if (move.from() != move.to()) {
            Move placed = move.onGround() || !(holds.onGround(move.from()) && holds.onGround(move.to()))
                    ? move
                    : move.grounded();
            moves.add(placed);
            moves.add(placed.reversed(reverseMode));
        }
    }
}
