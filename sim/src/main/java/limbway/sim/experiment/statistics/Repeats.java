package limbway.sim.experiment.statistics;

import java.util.Arrays;

/** Simple figures of some repetitions, with repeats; for {@link Bootstrap}. */
public final class Repeats {

    private Repeats() {}

    /**
     * The mean.
     *
     * @param values by repetition
     * @param chosen numbers of repetitions, from 0, one or more
     * @return mean of the chosen values
     */
    public static double mean(double[] values, int[] chosen) {
        double sum = 0;
        for (int i : chosen) {
            sum += values[i];
        }
        return sum / chosen.length;
    }

    /**
     * The median.
     *
     * @param values by repetition
     * @param chosen numbers of repetitions, from 0, one or more
     * @return middle of the chosen values, halfway between the two in the middle if their number is even
     */
    public static double median(double[] values, int[] chosen) {
        double[] sorted = new double[chosen.length];
        for (int i = 0; i < sorted.length; i++) {
            sorted[i] = values[chosen[i]];
        }
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
