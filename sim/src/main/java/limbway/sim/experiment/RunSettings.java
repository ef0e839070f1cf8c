package limbway.sim.experiment;

import java.time.LocalDate;

/**
 * How a layout is run.
 *
 * @param seed master seed, 1 to 2147483647
 * @param replications independent repetitions, 1 or more
 * @param days days in each, 1 or more
 * @param date calendar date of day 1
 * @param threads threads to use, 1 or more; the result does not depend on it
 * @param warmUpDays days lived before day 1 and left out of the result, 0 or more
 */
public record RunSettings(int seed, int replications, int days, LocalDate date, int threads, int warmUpDays) {

    /**
     * A run without days to warm up.
     *
     * @param seed master seed, 1 to 2147483647
     * @param replications independent repetitions, 1 or more
     * @param days days in each, 1 or more
     * @param date calendar date of day 1
     * @param threads threads to use, 1 or more; the result does not depend on it
     */
    public RunSettings(int seed, int replications, int days, LocalDate date, int threads) {
        this(seed, replications, days, date, threads, 0);
    }

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException naming the setting outside its range
     */
    public RunSettings {
        requireAtLeastOne("seed", seed);
        requireAtLeastOne("replications", replications);
        requireAtLeastOne("days", days);
        requireAtLeastOne("threads", threads);
        if (warmUpDays < 0) {
            throw new IllegalArgumentException("run: warmUpDays = " + warmUpDays + ", allowed 0 to 2147483647");
        }
    }

    private static void requireAtLeastOne(String setting, int value) {
        if (value < 1) {
            throw new IllegalArgumentException("run: " + setting + " = " + value + ", allowed 1 to 2147483647");
        }
    }
}
