package limbway.model.graph;

import java.util.Arrays;

/** Puts the moves of a draft in order of start, end, mode and gap, each once. */
final class MoveOrder {

    private final MoveList list;
    private final int[] number;

    MoveOrder(MoveList list, int[] number) {
        this.list = list;
        this.number = number;
    }

    /** Numbers of moves in the list, in their final order. */
    int[] distinct() {
        int holds = number.length;
        int[] start = new int[holds + 1];
        for (int m = 0; m < list.size(); m++) {
            start[number[list.from(m)] + 1]++;
        }
        for (int h = 0; h < holds; h++) {
            start[h + 1] += start[h];
        }
        int[] byStart = new int[list.size()];
        int[] next = start.clone();
        for (int m = 0; m < list.size(); m++) {
            byStart[next[number[list.from(m)]]++] = m;
        }
        int count = 0;
        for (int h = 0; h < holds; h++) {
            count = sortAndThin(byStart, start[h], start[h + 1], count);
        }
        return Arrays.copyOf(byStart, count);
    }

    /** Sorts the moves out of one hold and moves the different ones down to where the last kept move stands. */
    private int sortAndThin(int[] moves, int begin, int end, int keptBefore) {
        long[] keys = new long[end - begin];
        for (int i = begin; i < end; i++) {
            int m = moves[i];
            keys[i - begin] = (long) number[list.to(m)] << 32 | (long) (list.kind(m) & 0xff) << 24 | (i - begin);
        }
        Arrays.sort(keys);
        int[] sorted = new int[keys.length];
        for (int i = 0; i < keys.length; i++) {
            sorted[i] = moves[begin + (int) (keys[i] & 0xff_ffff)];
        }
        int kept = keptBefore;
        for (int i = 0; i < sorted.length; i++) {
            if (!isRepeated(sorted, i)) {
                moves[kept++] = sorted[i];
            }
        }
        return kept;
    }

    private boolean isRepeated(int[] sorted, int i) {
        int m = sorted[i];
        for (int k = i - 1; k >= 0; k--) {
            int other = sorted[k];
            if (list.to(other) != list.to(m) || list.kind(other) != list.kind(m)) {
                return false;
            }
            if (list.gapM(other) == list.gapM(m)
                    && list.firstCarrier(other) == list.firstCarrier(m)
                    && list.secondCarrier(other) == list.secondCarrier(m)
                    && list.stiffnessNPerM(other) == list.stiffnessNPerM(m)) {
                return true;
            }
        }
        return false;
    }
}
