package limbway.model.graph;

import java.util.Arrays;

/** The holds along one straight piece, in any order until they are asked for in order. */
final class LineHolds {

    private double[] shares = new double[16];
    private int[] holds = new int[16];
    private int size;

    void add(double share, int hold) {
        if (size == shares.length) {
            shares = Arrays.copyOf(shares, 2 * size);
            holds = Arrays.copyOf(holds, 2 * size);
        }
        shares[size] = share;
        holds[size] = hold;
        size++;
    }

    /** Holds from the start of the piece to its end; one may be named twice in a row. */
    int[] inOrder() {
        // most come in order already, so that inserting the few others costs little
        for (int i = 1; i < size; i++) {
            double share = shares[i];
            int hold = holds[i];
            int k = i - 1;
            while (k >= 0 && shares[k] > share) {
                shares[k + 1] = shares[k];
                holds[k + 1] = holds[k];
                k--;
            }
            shares[k + 1] = share;
            holds[k + 1] = hold;
        }
        return Arrays.copyOf(holds, size);
    }
}
