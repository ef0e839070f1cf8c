package limbway.model.graph;

import limbway.model.body.LocomotorMode;

/** Moves as flat arrays, sorted by the hold they start from, with an index by the hold they end at. */
final class MoveArrays {

    static final LocomotorMode[] MODES = LocomotorMode.values();

    final int[] firstFrom;
    final int[] firstInto;
    final int[] into;
    final int[] from;
    final int[] to;
    final byte[] mode;
    final boolean[] onGround;
    final double[] lengthM;
    final double[] startM;
    final double[] slopeDeg;
    final double[] gapM;
    final int[] firstCarrier;
    final int[] secondCarrier;
    final Carrier[] carriers;

    MoveArrays(int holds, int moves, Carrier[] carriers) {
        this.firstFrom = new int[holds + 1];
        this.firstInto = new int[holds + 1];
        this.into = new int[moves];
        this.from = new int[moves];
        this.to = new int[moves];
        this.mode = new byte[moves];
        this.onGround = new boolean[moves];
        this.lengthM = new double[moves];
        this.startM = new double[moves];
        this.slopeDeg = new double[moves];
        this.gapM = new double[moves];
        this.firstCarrier = new int[moves];
        this.secondCarrier = new int[moves];
        this.carriers = carriers;
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
