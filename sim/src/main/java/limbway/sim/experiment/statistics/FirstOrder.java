package limbway.sim.experiment.statistics;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

import org.apache.commons.math3.distribution.FDistribution;

/**
 * How much of the spread of an answer one input explains by itself, from any sample of inputs and answers: the variance of
 * the mean of the answer given the input, over the variance of the answer.
 *
 * <p>The sample is sorted by the input and cut into bins of equal number; the means of the bins stand for the conditional
 * mean. Bins of few points differ by chance alone; that is taken off, so that an input without effect has index 0 on
 * average and may come out a little below it.
 *
 * @param index share of the variance, at most 1
 * @param floor what the greatest index of all inputs reaches in one of twenty such samples if none of them has an effect
 * @param n points, more than bins
 * @param bins bins, 2 or more
 * @source correlation ratio of Pearson 1905, corrected by Kelley 1935, Proc. Natl. Acad. Sci. 21:554-559, doi
 *     10.1073/pnas.21.9.554; used as a first-order index from given data as in Plischke 2010, Reliab. Eng. Syst. Saf.
 *     95:354-360, doi 10.1016/j.ress.2009.11.005 (all from memory)
 * @validity changes of the conditional mean within a bin are missed; the floor takes the rest of the answer as normal
 */
public record FirstOrder(double index, double floor, int n, int bins) {

    /** Chance that a floor is passed by any input if none has an effect. Assumption. */
    public static final double FALSE_ALARM = 0.05;

    private static final int FEWEST_BINS = 3;
    private static final int MOST_BINS = 20;

    /**
     * How many bins suit a sample: a third of the square root of its size. Few bins miss what turns up and down again; many
     * drown in chance. Assumption.
     *
     * @param n points
     * @return 3 to 20
     */
    public static int binsFor(int n) {
        return Math.max(FEWEST_BINS, Math.min(MOST_BINS, (int) (Math.sqrt(n) / 3)));
    }

    /**
     * The index of an input.
     *
     * @param input values of the input
     * @param answer the answer at each, as many
     * @param bins number of bins, 2 or more, fewer than points
     * @param floor what chance reaches, see {@link #floor}
     * @return the index; 0 where the answer is always the same
     * @throws IllegalArgumentException if there are not more points than bins, or not as many answers as inputs
     */
    public static FirstOrder of(double[] input, double[] answer, int bins, double floor) {
        int n = answer.length;
        if (input.length != n || bins < 2 || n <= bins) {
            throw new IllegalArgumentException("first-order index: inputs = " + input.length + ", answers = " + n
                    + ", bins = " + bins + ", allowed 2 bins or more and more points than bins");
        }
        List<Integer> order = IntStream.range(0, n)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> input[i]))
                .toList();
        double mean = mean(order, answer, 0, n);
        double between = 0;
        double all = 0;
        for (int bin = 0; bin < bins; bin++) {
            int from = (int) ((long) n * bin / bins);
            int to = (int) ((long) n * (bin + 1) / bins);
            double ofBin = mean(order, answer, from, to) - mean;
            between += (to - from) * ofBin * ofBin;
        }
        for (double value : answer) {
            all += (value - mean) * (value - mean);
        }
        double ratio = all > 0 ? between / all : 0;
        return new FirstOrder(all > 0 ? corrected(ratio, n, bins) : 0, floor, n, bins);
    }

    /** What chance makes of the bins is taken off: 1 - (within / (n - bins)) / (all / (n - 1)). */
    private static double corrected(double ratio, int n, int bins) {
        return 1 - (1 - ratio) * (n - 1) / (n - bins);
    }

    /**
     * What the greatest index of several inputs reaches by chance in one of twenty samples if none of them has an effect.
     *
     * @param n points, more than bins
     * @param bins bins, 2 or more
     * @param inputs how many inputs are looked at together, 1 or more; the more, the higher
     * @return an index, 0 to 1
     */
    public static double floor(int n, int bins, int inputs) {
        // without any effect (between / (bins - 1)) / (within / (n - bins)) follows Fisher's distribution
        double f = new FDistribution(null, bins - 1, n - bins).inverseCumulativeProbability(1 - FALSE_ALARM / inputs);
        double odds = f * (bins - 1) / (n - bins);
        return corrected(odds / (1 + odds), n, bins);
    }

    private static double mean(List<Integer> order, double[] answer, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += answer[order.get(i)];
        }
        return sum / (to - from);
    }

    /**
     * Whether the input explains more than chance would.
     *
     * @return true above the floor
     */
    public boolean isAboveFloor() {
        return index > floor;
    }
}
