package limbway.sim.experiment.statistics;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

import limbway.sim.chance.Stream;

/**
 * Intervals for what has no textbook interval, such as medians and ratios: repetitions are drawn again and again, with
 * replacement, from those that there are, and whole repetitions, so that what belongs together stays together.
 *
 * <p>The ends are plain quantiles of what is drawn (percentile method).
 *
 * @param stream where chance comes from; the same stream gives the same interval
 * @param resamples how often repetitions are drawn, 2000 or more
 * @source Efron 1979, Annals of Statistics 7:1-26, doi 10.1214/aos/1176344552; from memory
 * @validity ten independent repetitions or more; with fewer, and for ratios of skewed values, intervals are too narrow
 */
public record Bootstrap(Stream stream, int resamples) {

    /** Fewer make the ends of the interval themselves uncertain. */
    public static final int LEAST_RESAMPLES = 2000;

    private static final double TAIL = 0.025;

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
     * @param repetitions how many there are
     * @param statistic computes it from the numbers of the repetitions that take part, from 0, with repeats
     * @return its value and interval; empty if there are fewer than two repetitions, or if it is not finite for these or for
     *     some of those drawn
     */
    public Optional<Range> of(int repetitions, ToDoubleFunction<int[]> statistic) {
        if (repetitions < 2) {
            return Optional.empty();
        }
        int[] chosen = new int[repetitions];
        Arrays.setAll(chosen, i -> i);
        double value = statistic.applyAsDouble(chosen);
        double[] drawn = new double[resamples];
        long counter = 0;
        for (int r = 0; r < resamples; r++) {
            for (int i = 0; i < repetitions; i++) {
                chosen[i] = (int) (stream.uniform(counter++) * repetitions);
            }
            drawn[r] = statistic.applyAsDouble(chosen);
        }
        if (!Double.isFinite(value) || !Arrays.stream(drawn).allMatch(Double::isFinite)) {
            return Optional.empty();
        }
        Arrays.sort(drawn);
        int below = (int) Math.floor(TAIL * (resamples + 1)) - 1;
        return Optional.of(new Range(value, drawn[below], drawn[resamples - 1 - below]));
    }
}
