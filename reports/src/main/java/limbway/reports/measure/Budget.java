package limbway.reports.measure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.statistics.Interval;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

/**
 * How the animals divide their day. Waking time is all time but stays of motive night; trips to bed belong to it.
 *
 * @param waking share of the waking time of all animals together, 0 to 1, for each activity but being in bed, which is
 *     left out; empty if nobody was awake
 * @param atRest share of waking time of resting and of comfort and company together; empty if nobody was awake
 * @param byHour the hours of the day in which anybody was awake, in order
 */
public record Budget(Map<Activity, Interval> waking, Optional<Interval> atRest, List<Hour> byHour) {

    private static final long HOUR_MS = 3_600_000;
    private static final int HOURS = 24;
    private static final List<Integer> ALL_DAY =
            IntStream.range(0, HOURS).boxed().toList();

    /**
     * One hour by the clock.
     *
     * @param hour 0 to 23
     * @param shares share of the time of all animals together in that hour, 0 to 1, for every activity
     */
    public record Hour(int hour, Map<Activity, Interval> shares) {

        /** Keeps a copy. */
        public Hour {
            shares = Collections.unmodifiableMap(new EnumMap<>(shares));
        }
    }

    /** Keeps copies. */
    public Budget {
        waking = waking.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(waking));
        byHour = List.copyOf(byHour);
    }

    /**
     * Computes the measure.
     *
     * @param outcome a run with at least one finished replication
     * @return how the day divides
     */
    public static Budget of(Outcome outcome) {
        List<long[][]> runs = outcome.journals().stream().map(Budget::timesMs).toList();
        Map<Activity, Interval> waking = new EnumMap<>(Activity.class);
        for (Activity activity : Activity.values()) {
            if (activity != Activity.NIGHT) {
                share(runs, EnumSet.of(activity), ALL_DAY, false).ifPresent(share -> waking.put(activity, share));
            }
        }
        List<Hour> byHour = new ArrayList<>();
        for (int h = 0; h < HOURS; h++) {
            int hour = h;
            if (runs.stream().anyMatch(timesMs -> sumMs(timesMs[hour], false) > 0)) {
                Map<Activity, Interval> shares = new EnumMap<>(Activity.class);
                for (Activity activity : Activity.values()) {
                    share(runs, EnumSet.of(activity), List.of(hour), true)
                            .ifPresent(share -> shares.put(activity, share));
                }
                byHour.add(new Hour(hour, shares));
            }
        }
        return new Budget(waking, share(runs, EnumSet.of(Activity.RESTING, Activity.COMFORT), ALL_DAY, false), byHour);
    }

    private static Optional<Interval> share(
            List<long[][]> runs, Set<Activity> activities, List<Integer> hours, boolean withNight) {
        List<Double> values = new ArrayList<>();
        for (long[][] timesMs : runs) {
            long all = 0;
            long some = 0;
            for (int hour : hours) {
                all += sumMs(timesMs[hour], withNight);
                for (Activity activity : activities) {
                    some += timesMs[hour][activity.ordinal()];
                }
            }
            if (all > 0) {
                values.add((double) some / all);
            }
        }
        return Interval.of(values);
    }

    private static long sumMs(long[] ofActivityMs, boolean withNight) {
        long sum = 0;
        for (Activity activity : Activity.values()) {
            sum += withNight || activity != Activity.NIGHT ? ofActivityMs[activity.ordinal()] : 0;
        }
        return sum;
    }

    /** Time of all animals by hour of the day and activity, {@code [hour][activity], 24 × 6, [ms]}. */
    private static long[][] timesMs(Journal journal) {
        long[][] timesMs = new long[HOURS][Activity.values().length];
        for (Stay stay : journal.stays()) {
            add(timesMs, Activity.of(stay), stay.startMs(), stay.endMs());
        }
        for (Trip trip : journal.trips()) {
            add(timesMs, Activity.MOVING, trip.startMs(), trip.endMs());
        }
        return timesMs;
    }

    private static void add(long[][] timesMs, Activity activity, long startMs, long endMs) {
        for (long from = startMs; from < endMs; ) {
            long to = Math.min(endMs, (Math.floorDiv(from, HOUR_MS) + 1) * HOUR_MS);
            timesMs[(int) Math.floorMod(Math.floorDiv(from, HOUR_MS), (long) HOURS)][activity.ordinal()] += to - from;
            from = to;
        }
    }
}
