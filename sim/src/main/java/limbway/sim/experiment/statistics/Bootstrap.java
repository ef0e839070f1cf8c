package limbway.sim.experiment.statistics;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

import org.apache.commons.math3.distribution.NormalDistribution;

import limbway.sim.chance.Stream;

/**
 * Intervals for what has no textbook interval, such as medians and ratios: repetitions are drawn again and again, with
 * replacement, from those that there are, and whole repetitions, so that what belongs together stays together.
 *
 * <p>The ends are corrected for bias and for a spread that changes with the value (BCa).
 *
 * @param stream where chance comes from; the same stream gives the same interval
 * @param resamples how often repetitions are drawn, 2000 or more
 * @source Efron 1987, Journal of the American Statistical Association 82:171-185, doi 10.1080/01621459.1987.10478410; from
 *     memory
 * @validity ten independent repetitions or more; with fewer, intervals are too narrow
 */
public record Bootstrap(Stream stream, int resamples) {

    /** Fewer make the ends of the interval themselves uncertain. */
    public static final int LEAST_RESAMPLES = 2000;

    private static final double TAIL = 0.025;
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    /**
     * A value with its interval.
     *
     * @param value the value of all repetitions
     * @param lo lower end of the 95 % interval
     * @param hi upper end of the 95 % interval
     */
    public record Range(double value, double lo, double hi) {}

    /**
     * Checks the number of resamples.
     *
     * @throws IllegalArgumentException if there are fewer than 2000
     */
    public Bootstrap {
        if (resamples < LEAST_RESAMPLES) {
            throw new IllegalArgumentException(
                    "bootstrap: resamples = " + resamples + ", allowed " + LEAST_RESAMPLES + " or more");
        }
    }

    /**
     * The interval of something computed from repetitions.
     *
     * @param repetitions how many there are, 2 or more
     * @param statistic computes it from the numbers of the repetitions that take part, from 0, with repeats; must not depend
     *     on their order
     * @return its value and interval; empty if there are fewer than two repetitions or the value is not finite for these, for
     *     some of those drawn, or for all but one
     */
    public Optional<Range> of(int repetitions, ToDoubleFunction<int[]> statistic) {
        int[] all = new int[Math.max(0, repetitions)];
        Arrays.setAll(all, i -> i);
        if (repetitions < 2) {
            return Optional.empty();
        }
        double value = statistic.applyAsDouble(all);
        double[] drawn = drawn(repetitions, statistic);
        double acceleration = acceleration(repetitions, statistic);
        if (!Double.isFinite(value)
                || !Double.isFinite(acceleration)
                || !Arrays.stream(drawn).allMatch(Double::isFinite)) {
            return Optional.empty();
        }
        double bias = bias(value, drawn);
        return Optional.of(
                new Range(value, end(drawn, bias, acceleration, TAIL), end(drawn, bias, acceleration, 1 - TAIL)));
    }

    private double[] drawn(int repetitions, ToDoubleFunction<int[]> statistic) {
        double[] drawn = new double[resamples];
        int[] chosen = new int[repetitions];
        long counter = 0;
        for (int r = 0; r < resamples; r++) {
            for (int i = 0; i < repetitions; i++) {
                chosen[i] = (int) (stream.uniform(counter++) * repetitions);
            }
            drawn[r] = statistic.applyAsDouble(chosen);
        }
        Arrays.sort(drawn);
        return drawn;
    }

    /** The skewness of the influence of single repetitions, by leaving out one after the other. */
    private static double acceleration(int repetitions, ToDoubleFunction<int[]> statistic) {
        double[] without = new double[repetitions];
        for (int left = 0; left < repetitions; left++) {
            int[] others = new int[repetitions - 1];
            for (int i = 0; i < others.length; i++) {
                others[i] = i < left ? i : i + 1;
            }
            without[left] = statistic.applyAsDouble(others);
        }
        double mean = Arrays.stream(without).sum() / repetitions;
        double squares = 0;
        double cubes = 0;
        for (double one : without) {
            squares += (mean - one) * (mean - one);
            cubes += (mean - one) * (mean - one) * (mean - one);
        }
        // where no repetition matters more than another there is nothing to correct
        return squares == 0 ? 0 : cubes / (6 * squares * Math.sqrt(squares));
    }

    private static double bias(double value, double[] drawn) {
        double below = 0;
        for (double one : drawn) {
            below += one < value ? 1 : one == value ? 0.5 : 0;
        }
        double share = below / drawn.length;
        double least = 0.5 / drawn.length;
        return NORMAL.inverseCumulativeProbability(Math.max(least, Math.min(1 - least, share)));
    }

    private static double end(double[] drawn, double bias, double acceleration, double tail) {
        double z = bias + NORMAL.inverseCumulativeProbability(tail);
        double share = NORMAL.cumulativeProbability(bias + z / (1 - acceleration * z));
        int place = (int) Math.floor(share * (drawn.length + 1)) - 1;
        return drawn[Math.max(0, Math.min(drawn.length - 1, place))];
    }
}
