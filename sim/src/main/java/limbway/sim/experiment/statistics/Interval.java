package limbway.sim.experiment.statistics;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * A mean over replications with its 95 % interval of Student's t.
 *
 * @param mean mean of the values
 * @param halfWidth half the width of the interval, or empty where fewer than two values leave it unknown
 * @param n number of replications that gave a value, 1 or more
 * @source Student 1908, Biometrika 6:1-25, doi 10.1093/biomet/6.1.1; quantiles by Apache Commons Math
 * @validity replications are independent and their values roughly normal
 */
public record Interval(double mean, OptionalDouble halfWidth, int n) {

    private static final double UPPER_TAIL = 0.975;
    private static final double TAIL = 1 - UPPER_TAIL;

    /**
     * Mean and interval of one value from each replication.
     *
     * @param values finite values in order of the replications
     * @return the interval, or empty if there are no values
     */
    public static Optional<Interval> of(List<Double> values) {
        int n = values.size();
        if (n == 0) {
            return Optional.empty();
        }
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        double mean = sum / n;
        if (n == 1) {
            return Optional.of(new Interval(mean, OptionalDouble.empty(), 1));
        }
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        double standardError = Math.sqrt(squares / (n - 1) / n);
        double quantile = new TDistribution(null, n - 1).inverseCumulativeProbability(UPPER_TAIL);
        return Optional.of(new Interval(mean, OptionalDouble.of(quantile * standardError), n));
    }

    /**
     * Lower end of the interval.
     *
     * @return mean less half the width, or empty if unknown
     */
    public OptionalDouble lo() {
        return halfWidth.isPresent() ? OptionalDouble.of(mean - halfWidth.getAsDouble()) : halfWidth;
    }

    /**
     * Upper end of the interval.
     *
     * @return mean plus half the width, or empty if unknown
     */
    public OptionalDouble hi() {
        return halfWidth.isPresent() ? OptionalDouble.of(mean + halfWidth.getAsDouble()) : halfWidth;
    }

    /**
     * The interval where several are judged together: wide enough that it holds 0 exactly where the corrected p value does not
     * declare a difference at 0.05.
     *
     * @param questions how many times its p value is taken, 1 or more: that of {@link Holm} over its own
     * @return the same mean with a wider interval
     * @throws IllegalArgumentException if the number is below 1
     */
    public Interval corrected(double questions) {
        if (!(questions >= 1)) {
            throw new IllegalArgumentException("interval: questions = " + questions + ", allowed 1 or more");
        }
        if (halfWidth.isEmpty()) {
            return this;
        }
        TDistribution student = new TDistribution(null, n - 1);
        double wider = student.inverseCumulativeProbability(1 - TAIL / questions)
                / student.inverseCumulativeProbability(UPPER_TAIL);
        return new Interval(mean, OptionalDouble.of(wider * halfWidth.getAsDouble()), n);
    }

    /**
     * Chance of a mean so far from 0 if it were 0 in truth, by Student's t.
     *
     * @return 0 to 1; 1 where nothing is known of the width or the mean is 0, else 0 where all values are alike
     */
    public double p() {
        if (halfWidth.isEmpty() || mean == 0) {
            return 1;
        }
        if (halfWidth.getAsDouble() == 0) {
            return 0;
        }
        TDistribution student = new TDistribution(null, n - 1);
        double error = halfWidth.getAsDouble() / student.inverseCumulativeProbability(UPPER_TAIL);
        return Math.min(1, 2 * student.cumulativeProbability(-Math.abs(mean) / error));
    }
}
