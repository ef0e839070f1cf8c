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
 * @param firstReplication number of the first repetition, 1 or more; each number has its own chance
 */
public record RunSettings(
        int seed, int replications, int days, LocalDate date, int threads, int warmUpDays, int firstReplication) {

    /**
     * A run that begins with the first repetition.
     *
     * @param seed master seed, 1 to 2147483647
     * @param replications independent repetitions, 1 or more
     * @param days days in each, 1 or more
     * @param date calendar date of day 1
     * @param threads threads to use, 1 or more; the result does not depend on it
     * @param warmUpDays days lived before day 1 and left out of the result, 0 or more
     */
    public RunSettings(int seed, int replications, int days, LocalDate date, int threads, int warmUpDays) {
        this(seed, replications, days, date, threads, warmUpDays, 1);
    }

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
        requireAtLeastOne("firstReplication", firstReplication);
        if (warmUpDays < 0) {
            throw new IllegalArgumentException("run: warmUpDays = " + warmUpDays + ", allowed 0 to 2147483647");
        }
    }

    /**
     * Some of the repetitions.
     *
     * @param first number of the first of them, 1 or more
     * @param count how many, 1 or more
     * @return the same settings for those repetitions
     */
    public RunSettings repetitions(int first, int count) {
        return new RunSettings(seed, count, days, date, threads, warmUpDays, first);
    }

    /**
     * The same run with other chance.
     *
     * @param other master seed, 1 to 2147483647
     * @return a copy
     */
    public RunSettings withSeed(int other) {
        return new RunSettings(other, replications, days, date, threads, warmUpDays, firstReplication);
    }

    /**
     * The same run on other threads.
     *
     * @param count threads to use, 1 or more
     * @return a copy
     */
    public RunSettings onThreads(int count) {
        return new RunSettings(seed, replications, days, date, count, warmUpDays, firstReplication);
    }

    private static void requireAtLeastOne(String setting, int value) {
        if (value < 1) {
            throw new IllegalArgumentException("run: " + setting + " = " + value + ", allowed 1 to 2147483647");
        }
    }
}
