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
}
