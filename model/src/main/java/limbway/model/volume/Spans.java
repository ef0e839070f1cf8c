package limbway.model.volume;

import java.util.Arrays;

/** Stretches of height within limits, and the length that they cover together. Used again for each column. */
final class Spans {

    private final double lowestM;
    private final double highestM;
    private double[] from = new double[16];
    private double[] to = new double[16];
    private int count;

    Spans(double lowestM, double highestM) {
        this.lowestM = lowestM;
        this.highestM = highestM;
    }

    void clear() {
        count = 0;
    }

    /** Adds a stretch; what lies outside the limits is cut off. */
    void add(double fromM, double toM) {
        double low = Math.max(lowestM, fromM);
        double high = Math.min(highestM, toM);
        if (!(high > low)) {
            return;
        }
        if (count == from.length) {
            from = Arrays.copyOf(from, 2 * count);
            to = Arrays.copyOf(to, 2 * count);
        }
        int at = count++;
        // few stretches meet in one column, so that they are kept in order as they come
        while (at > 0 && from[at - 1] > low) {
            from[at] = from[at - 1];
            to[at] = to[at - 1];
            at--;
        }
        from[at] = low;
        to[at] = high;
    }

    /** Length covered by at least one stretch [m]. */
    double coveredM() {
        double sum = 0;
        double end = lowestM;
        for (int i = 0; i < count; i++) {
            if (to[i] > end) {
                sum += to[i] - Math.max(end, from[i]);
                end = to[i];
            }
        }
        return sum;
    }
}
