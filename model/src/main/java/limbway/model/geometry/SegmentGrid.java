package limbway.model.geometry;

import java.util.Arrays;
import java.util.List;

/**
 * Finds all pairs of lines that come near each other, by sorting the cells of a uniform grid that each line's box
 * touches.
 *
 * <p>A pair is reported once, by the cell in which the two boxes first overlap, so no set of seen pairs is kept. Pairs
 * come in an order that depends only on the list.
 */
public final class SegmentGrid {

    /** Receives the indices of two lines, the smaller first. */
    @FunctionalInterface
    public interface Pair {
        /**
         * Called once for each pair of lines whose boxes come within the distance.
         *
         * @param first index of one line
         * @param second index of the other, greater than {@code first}
         */
        void accept(int first, int second);
    }

    private final double cellM;
    private final double marginM;
    private final double[] low;
    private final double[] high;

    private SegmentGrid(double cellM, double marginM, double[] low, double[] high) {
        this.cellM = cellM;
        this.marginM = marginM;
        this.low = low;
        this.high = high;
    }

    /**
     * Visits every pair of lines whose boxes come within a distance of each other; all pairs whose closest approach is
     * within it are among them.
     *
     * @param lines any lines
     * @param withinM distance [m], above 0
     * @param visitor called for each pair
     */
    public static void forEachNearPair(List<Segment> lines, double withinM, Pair visitor) {
        int n = lines.size();
        double[] low = new double[3 * n];
        double[] high = new double[3 * n];
        for (int i = 0; i < n; i++) {
            Point a = lines.get(i).a();
            Point b = lines.get(i).b();
            box(low, high, 3 * i, a.xM(), b.xM());
            box(low, high, 3 * i + 1, a.yM(), b.yM());
            box(low, high, 3 * i + 2, a.zM(), b.zM());
        }
        new SegmentGrid(Math.max(4, withinM), withinM, low, high).visit(n, visitor);
    }

    private static void box(double[] low, double[] high, int k, double a, double b) {
        low[k] = Math.min(a, b);
        high[k] = Math.max(a, b);
    }

    private void visit(int n, Pair visitor) {
        long[] entries = entries(n);
        int start = 0;
        while (start < entries.length) {
            int end = start;
            long cell = entries[start] >>> 32;
            while (end < entries.length && entries[end] >>> 32 == cell) {
                end++;
            }
            for (int i = start; i < end; i++) {
                for (int j = i + 1; j < end; j++) {
                    int first = (int) entries[i];
                    int second = (int) entries[j];
                    if (boxesNear(first, second) && hash(sharedCell(first, second)) == (int) cell) {
                        visitor.accept(first, second);
                    }
                }
            }
            start = end;
        }
    }

    /** One entry for each cell that a widened box touches: hash of the cell above, index of the line below. */
    private long[] entries(int n) {
        long[] entries = new long[Math.max(16, 4 * n)];
        int count = 0;
        for (int i = 0; i < n; i++) {
            int firstOfLine = count;
            for (int x = cell(low[3 * i]); x <= cell(high[3 * i] + marginM); x++) {
                for (int y = cell(low[3 * i + 1]); y <= cell(high[3 * i + 1] + marginM); y++) {
                    for (int z = cell(low[3 * i + 2]); z <= cell(high[3 * i + 2] + marginM); z++) {
                        if (count == entries.length) {
                            entries = Arrays.copyOf(entries, 2 * count);
                        }
                        long entry = ((long) hash(x, y, z) << 32) | i;
                        // two cells of one line may share a hash: the pair must still be met once
                        if (!contains(entries, firstOfLine, count, entry)) {
                            entries[count++] = entry;
                        }
                    }
                }
            }
        }
        long[] sorted = Arrays.copyOf(entries, count);
        Arrays.sort(sorted);
        return sorted;
    }

    private static boolean contains(long[] entries, int from, int to, long entry) {
        for (int i = from; i < to; i++) {
            if (entries[i] == entry) {
                return true;
            }
        }
        return false;
    }

    private boolean boxesNear(int i, int j) {
        for (int k = 0; k < 3; k++) {
            if (low[3 * i + k] - high[3 * j + k] > marginM || low[3 * j + k] - high[3 * i + k] > marginM) {
                return false;
            }
        }
        return true;
    }

    private int[] sharedCell(int i, int j) {
        int[] cell = new int[3];
        for (int k = 0; k < 3; k++) {
            cell[k] = cell(Math.max(low[3 * i + k], low[3 * j + k]));
        }
        return cell;
    }

    private int cell(double m) {
        return (int) Math.floor(m / cellM);
    }

    private static int hash(int[] cell) {
        return hash(cell[0], cell[1], cell[2]);
    }

    private static int hash(int x, int y, int z) {
        int h = x * 73_856_093 ^ y * 19_349_663 ^ z * 83_492_791;
        return h & 0x7fff_ffff;
    }
}
