package limbway.model.graph;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

import limbway.model.body.LocomotorMode;

/** Moves as they are found, in flat arrays; the same move may be found twice and is thinned out later. */
final class MoveList {

    /** A support touched within this distance needs no reaching over. */
    private static final double TOUCH_M = 0.02;

    private final HoldTable holds;
    private final Obstructions obstructions;
    private final Map<Carrier, Integer> carriers = new LinkedHashMap<>();
    private int[] from = new int[4096];
    private int[] to = new int[4096];
    private byte[] kind = new byte[4096];
    private float[] gapM = new float[4096];
    private int[] first = new int[4096];
    private int[] second = new int[4096];
    private float[] stiffnessNPerM = new float[4096];
    private byte[] door = new byte[4096];
    private int size;

    MoveList(HoldTable holds, Obstructions obstructions) {
        this.holds = holds;
        this.obstructions = obstructions;
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

    /** Of what is arrived at; of a sway or leap, of what is left. */
    float stiffnessNPerM(int move) {
        return stiffnessNPerM[move];
    }

    /** Number of the door that a move passes through, from 1; 0 for none. */
    byte door(int move) {
        return door[move];
    }

    Carrier[] carriers() {
        return carriers.keySet().toArray(Carrier[]::new);
    }

    /** Both directions along one carrier, in one mode; none where something is in the way. */
    void along(int a, int b, LocomotorMode mode, boolean onGround, Carrier carrier) {
        int passage = obstructions.alongSupport(holds.place(a), holds.place(b));
        if (passage != Obstructions.BLOCKED) {
            byte moveKind = MoveArrays.kind(mode, onGround);
            int number = number(carrier);
            add(a, b, moveKind, 0, number, number, Stiffness.RIGID, passage);
            add(b, a, moveKind, 0, number, number, Stiffness.RIGID, passage);
        }
    }

    /** Both directions of a walk on the ground, through a door or none. */
    void walk(int a, int b, int doorNumber) {
        byte moveKind = MoveArrays.kind(LocomotorMode.QUADRUPEDAL_WALK, true);
        int number = number(Carrier.SURFACE);
        add(a, b, moveKind, 0, number, number, Stiffness.RIGID, doorNumber);
        add(b, a, moveKind, 0, number, number, Stiffness.RIGID, doorNumber);
    }

    /** Both directions up and down a steep carrier; none where something is in the way. */
    void climb(int a, int b, Carrier carrier) {
        int passage = obstructions.alongSupport(holds.place(a), holds.place(b));
        if (passage == Obstructions.BLOCKED) {
            return;
        }
        boolean up = holds.zM(b) >= holds.zM(a);
        int low = up ? a : b;
        int high = up ? b : a;
        int number = number(carrier);
        byte upward = MoveArrays.kind(LocomotorMode.VERTICAL_CLIMB, false);
        byte downward = MoveArrays.kind(LocomotorMode.VERTICAL_DESCENT, false);
        add(low, high, upward, 0, number, number, Stiffness.RIGID, passage);
        add(high, low, downward, 0, number, number, Stiffness.RIGID, passage);
    }

    /** Both directions over a gap between two carriers; none where something is in the way. */
    void over(Grip one, Grip other) {
        if (one.hold() == other.hold()) {
            return;
        }
        int passage = obstructions.passage(holds.place(one.hold()), holds.place(other.hold()));
        if (passage != Obstructions.BLOCKED) {
            over(one, other, passage);
        }
    }

    /** Both directions over a gap that is known to be open, or passes a door. */
    void over(Grip one, Grip other, int passage) {
        double gap = Math.max(0, gapM(one, other));
        boolean onGround = isOnGround(one) || isOnGround(other);
        boolean touching = gap <= TOUCH_M;
        byte moveKind = MoveArrays.kind(touching ? LocomotorMode.CLAMBER : LocomotorMode.BRIDGE, onGround);
        float moveGapM = touching ? 0 : (float) gap;
        int first = number(one.carrier());
        int second = number(other.carrier());
        add(one.hold(), other.hold(), moveKind, moveGapM, first, second, other.stiffnessNPerM(), passage);
        add(other.hold(), one.hold(), moveKind, moveGapM, second, first, one.stiffnessNPerM(), passage);
        if (touching && first == second && one.carrier().isWalkway()) {
            byte walked = MoveArrays.kind(LocomotorMode.QUADRUPEDAL_WALK, onGround);
            add(one.hold(), other.hold(), walked, 0, first, first, Stiffness.RIGID, passage);
            add(other.hold(), one.hold(), walked, 0, first, first, Stiffness.RIGID, passage);
        }
    }

    /** One direction in a mode that flings the whole body: sway, leap or drop; none where something is in the way. */
    void across(Grip from, Grip to, LocomotorMode mode) {
        int passage = obstructions.passage(holds.place(from.hold()), holds.place(to.hold()));
        if (from.hold() != to.hold() && passage != Obstructions.BLOCKED) {
            byte moveKind = MoveArrays.kind(mode, isOnGround(from) || isOnGround(to));
            int first = number(from.carrier());
            int second = number(to.carrier());
            add(
                    from.hold(),
                    to.hold(),
                    moveKind,
                    (float) gapM(from, to),
                    first,
                    second,
                    from.stiffnessNPerM(),
                    passage);
        }
    }

    /** Both directions along a support on two feet, a hand on another that is so far above. */
    void onTwoFeet(int a, int b, Carrier feet, Carrier rail, double handM) {
        int passage = obstructions.alongSupport(holds.place(a), holds.place(b));
        if (passage != Obstructions.BLOCKED) {
            byte moveKind = MoveArrays.kind(LocomotorMode.BIPEDAL_WALK, false);
            int first = number(feet);
            int second = number(rail);
            add(a, b, moveKind, (float) handM, first, second, Stiffness.RIGID, passage);
            add(b, a, moveKind, (float) handM, first, second, Stiffness.RIGID, passage);
        }
    }

    private double gapM(Grip one, Grip other) {
        return holds.distanceM(one.hold(), other.hold()) - one.radiusM() - other.radiusM();
    }

    private boolean isOnGround(Grip grip) {
        return grip.carrier().standing() && holds.onGround(grip.hold());
    }

    private int number(Carrier carrier) {
        return carriers.computeIfAbsent(carrier, c -> carriers.size());
    }

    /** A move between two holds at ground level is made on the ground, whatever is held on the way. */
    private void add(
            int a,
            int b,
            byte moveKind,
            float moveGapM,
            int firstCarrier,
            int secondCarrier,
            double moveStiffnessNPerM,
            int doorNumber) {
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
        stiffnessNPerM[size] = (float) moveStiffnessNPerM;
        door[size] = (byte) doorNumber;
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
        stiffnessNPerM = Arrays.copyOf(stiffnessNPerM, length);
        door = Arrays.copyOf(door, length);
    }
}
