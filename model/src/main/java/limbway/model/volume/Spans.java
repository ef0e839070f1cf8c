package limbway.model.volume;

import java.util.Arrays;

/** Stretches of height within limits, and the length that they cover together. Used again for each column. */
final class Spans {

    private double lowestM;
    private double highestM;
    private double windowLowM;
    private double windowHighM;
    private double[] from = new double[16];
    private double[] to = new double[16];
    private int count;

    /** Forgets everything and sets the limits. */
    void clear(double lowM, double highM) {
        lowestM = lowM;
        highestM = highM;
        count = 0;
        widen();
    }

    /** Until {@link #widen()}, only what lies between two heights is added. */
    void narrow(double lowM, double highM) {
        windowLowM = Math.max(lowestM, lowM);
        windowHighM = Math.min(highestM, highM);
    }

    void widen() {
        windowLowM = lowestM;
        windowHighM = highestM;
    }

    /** Adds a stretch; what lies outside the limits is cut off. */
    void add(double fromM, double toM) {
        double low = Math.max(windowLowM, fromM);
        double high = Math.min(windowHighM, toM);
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

    void addAll(Spans others) {
        for (int i = 0; i < others.count; i++) {
            add(others.from[i], others.to[i]);
        }
    }

    boolean isEmpty() {
        return count == 0;
    }

    /** Whether a height lies in one of the stretches. */
    boolean covers(double zM) {
        for (int i = 0; i < count && from[i] <= zM; i++) {
            if (zM <= to[i]) {
                return true;
            }
        }
        return false;
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
