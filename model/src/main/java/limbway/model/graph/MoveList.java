package limbway.model.graph;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Platform;
import limbway.model.geometry.Point;

/** Moves as they are found, in flat arrays; the same move may be found twice and is thinned out later. */
final class MoveList {

    /** A support touched within this distance needs no reaching over. */
    private static final double TOUCH_M = 0.02;

    private final HoldTable holds;
    private final List<Platform> decks;
    private final Map<Carrier, Integer> carriers = new LinkedHashMap<>();
    private int[] from = new int[4096];
    private int[] to = new int[4096];
    private byte[] kind = new byte[4096];
    private float[] gapM = new float[4096];
    private int[] first = new int[4096];
    private int[] second = new int[4096];
    private int size;

    MoveList(HoldTable holds, List<Platform> decks) {
        this.holds = holds;
        this.decks = decks;
    }

    int size() {
        return size;
    }

    int from(int move) {
        return from[move];
    }

    int to(int move) {
        return to[move];
    }

    /** Mode and ground in one byte: see {@link MoveArrays#kind}. */
    byte kind(int move) {
        return kind[move];
    }

    float gapM(int move) {
        return gapM[move];
    }

    int firstCarrier(int move) {
        return first[move];
    }

    int secondCarrier(int move) {
        return second[move];
    }

    Carrier[] carriers() {
        return carriers.keySet().toArray(Carrier[]::new);
    }

    /** Both directions along one carrier, in one mode. */
    void along(int a, int b, LocomotorMode mode, boolean onGround, Carrier carrier) {
        byte moveKind = MoveArrays.kind(mode, onGround);
        int number = number(carrier);
        add(a, b, moveKind, 0, number, number);
        add(b, a, moveKind, 0, number, number);
    }

    /** Both directions up and down a steep carrier. */
    void climb(int a, int b, Carrier carrier) {
        boolean up = holds.zM(b) >= holds.zM(a);
        int low = up ? a : b;
        int high = up ? b : a;
        int number = number(carrier);
        add(low, high, MoveArrays.kind(LocomotorMode.VERTICAL_CLIMB, false), 0, number, number);
        add(high, low, MoveArrays.kind(LocomotorMode.VERTICAL_DESCENT, false), 0, number, number);
    }

    /**
     * Both directions over a gap between two carriers, whose surfaces lie the given radii from the holds; none where a deck
     * is in the way.
     */
    void over(int a, Carrier firstCarrier, int b, Carrier secondCarrier, double radiiM) {
        if (a == b || isBarred(a, b)) {
            return;
        }
        double gap = Math.max(0, holds.distanceM(a, b) - radiiM);
        boolean onGround =
                (firstCarrier.standing() && holds.onGround(a)) || (secondCarrier.standing() && holds.onGround(b));
        boolean touching = gap <= TOUCH_M;
        byte moveKind = MoveArrays.kind(touching ? LocomotorMode.CLAMBER : LocomotorMode.BRIDGE, onGround);
        float moveGapM = touching ? 0 : (float) gap;
        int one = number(firstCarrier);
        int other = number(secondCarrier);
        add(a, b, moveKind, moveGapM, one, other);
        add(b, a, moveKind, moveGapM, other, one);
        if (touching && one == other && firstCarrier.isWalkway()) {
            along(a, b, LocomotorMode.QUADRUPEDAL_WALK, onGround, firstCarrier);
        }
    }

    private boolean isBarred(int a, int b) {
        if (decks.isEmpty()) {
            return false;
        }
        Point from = holds.place(a);
        Point to = holds.place(b);
        return decks.stream().anyMatch(deck -> deck.blocks(from, to));
    }

    private int number(Carrier carrier) {
        return carriers.computeIfAbsent(carrier, c -> carriers.size());
    }

    /** A move between two holds at ground level is made on the ground, whatever is held on the way. */
    private void add(int a, int b, byte moveKind, float moveGapM, int firstCarrier, int secondCarrier) {
        if (a == b) {
            return;
        }
        if (size == from.length) {
            grow();
        }
        from[size] = a;
        to[size] = b;
        kind[size] = holds.onGround(a) && holds.onGround(b) ? MoveArrays.grounded(moveKind) : moveKind;
        gapM[size] = moveGapM;
        first[size] = firstCarrier;
        second[size] = secondCarrier;
        size++;
    }

    private void grow() {
        int length = size + (size >> 1);
        from = Arrays.copyOf(from, length);
        to = Arrays.copyOf(to, length);
        kind = Arrays.copyOf(kind, length);
        gapM = Arrays.copyOf(gapM, length);
        first = Arrays.copyOf(first, length);
        second = Arrays.copyOf(second, length);
    }
}
