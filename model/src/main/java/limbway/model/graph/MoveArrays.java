package limbway.model.graph;

import limbway.model.body.LocomotorMode;

/**
 * Moves as flat arrays, sorted by the hold they start from, with an index by the hold they end at: 30 bytes a move.
 *
 * <p>Length and slope are not kept; they follow from the two holds.
 */
final class MoveArrays {

    static final LocomotorMode[] MODES = LocomotorMode.values();

    private static final int ON_GROUND = 0x80;

    final int[] firstFrom;
    final int[] firstInto;
    final int[] into;
    final int[] from;
    final int[] to;
    final byte[] kind;
    final float[] gapM;
    final int[] firstCarrier;
    final int[] secondCarrier;
    final float[] stiffnessNPerM;
    final byte[] door;
    final Carrier[] carriers;

    MoveArrays(int holds, int moves, Carrier[] carriers) {
        this.firstFrom = new int[holds + 1];
        this.firstInto = new int[holds + 1];
        this.into = new int[moves];
        this.from = new int[moves];
        this.to = new int[moves];
        this.kind = new byte[moves];
        this.gapM = new float[moves];
        this.firstCarrier = new int[moves];
        this.secondCarrier = new int[moves];
        this.stiffnessNPerM = new float[moves];
        this.door = new byte[moves];
        this.carriers = carriers;
    }

    /** Mode and ground in one byte. */
    static byte kind(LocomotorMode mode, boolean onGround) {
        return (byte) (mode.ordinal() | (onGround ? ON_GROUND : 0));
    }

    static byte grounded(byte kind) {
        return (byte) (kind | ON_GROUND);
    }

    LocomotorMode mode(int move) {
        return MODES[kind[move] & ~ON_GROUND & 0xff];
    }

    boolean onGround(int move) {
        return (kind[move] & ON_GROUND) != 0;
    }

    /** Fills both indices from the two ends of each move, which must be sorted by their start. */
    void index() {
        for (int m = 0; m < to.length; m++) {
            firstFrom[from[m] + 1]++;
            firstInto[to[m] + 1]++;
        }
        for (int h = 1; h < firstFrom.length; h++) {
            firstFrom[h] += firstFrom[h - 1];
            firstInto[h] += firstInto[h - 1];
        }
        int[] next = firstInto.clone();
        for (int m = 0; m < to.length; m++) {
            into[next[to[m]]++] = m;
        }
    }
}
