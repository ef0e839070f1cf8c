package limbway.sim.day;

import java.time.LocalDate;
import java.time.LocalTime;

import limbway.model.enclosure.Site;
import limbway.model.light.Daylight;
import limbway.sim.animal.NightSettings;

/**
 * When animals wake and must have settled, day by day.
 *
 * <p>Every day has 24 hours by the clock on the wall; a change to or from summer time is not played.
 */
public final class Almanac {

    /** Milliseconds in a day. */
    public static final long DAY_MS = 86_400_000;

    private static final double MS_PER_MIN = 60_000;

    /** Shorter waking days, far from the equator in winter, count as so long [ms]; assumption. */
    private static final long SHORTEST_WAKING_MS = 6 * 3_600_000L;

    private final long[] wakeMs;
    private final long[] settledMs;
    private final long[] sunsetMs;

    /**
     * The almanac of a run.
     *
     * @param site where
     * @param date calendar date of day 1
     * @param days number of days, 1 or more
     * @param settings when animals wake and settle
     */
    public Almanac(Site site, LocalDate date, int days, NightSettings settings) {
        wakeMs = new long[days + 1];
        settledMs = new long[days + 1];
        sunsetMs = new long[days + 1];
        for (int i = 0; i <= days; i++) {
            Daylight light = Daylight.of(site, date.plusDays(i));
            long midnightMs = i * DAY_MS;
            long early = Math.round(settings.wakeBeforeSunriseMin() * MS_PER_MIN);
            long margin = Math.round((settings.settledBeforeSunsetMin() + settings.nestBuildingMin()) * MS_PER_MIN);
            sunsetMs[i] = midnightMs + millis(light.sunset());
            // never before midnight, so that a night belongs to two days and no more
            wakeMs[i] = midnightMs + Math.max(1, millis(light.sunrise()) - early);
            settledMs[i] = Math.max(wakeMs[i], sunsetMs[i] - margin);
        }
    }

    /**
     * The day that a moment belongs to.
     *
     * @param ms time [ms]
     * @return day, from 1
     */
    public static int day(long ms) {
        return (int) (ms / DAY_MS) + 1;
    }

    static long millis(LocalTime clock) {
        return clock.toNanoOfDay() / 1_000_000;
    }

    /**
     * When animals wake.
     *
     * @param day day of the run, from 1 to one past the last
     * @return time [ms]
     */
    public long wakeMs(int day) {
        return wakeMs[day - 1];
    }

    /**
     * When animals must have reached their nests, with time left to build before they have to be settled.
     *
     * @param day day of the run, from 1 to one past the last
     * @return time [ms]
     */
    public long settledMs(int day) {
        return settledMs[day - 1];
    }

    /**
     * Length of the waking day.
     *
     * @param day day of the run, from 1 to one past the last
     * @return time from waking until all must have settled, at least six hours [ms]
     */
    public long wakingMs(int day) {
        return Math.max(SHORTEST_WAKING_MS, settledMs(day) - wakeMs(day));
    }

    /**
     * Sunset.
     *
     * @param day day of the run, from 1 to one past the last
     * @return time [ms]
     */
    public long sunsetMs(int day) {
        return sunsetMs[day - 1];
    }

    /**
     * The next time to wake.
     *
     * @param ms any time of the run [ms]
     * @return first waking time after it [ms]
     */
    public long nextWakeMs(long ms) {
        int day = day(ms);
        return ms < wakeMs(day) ? wakeMs(day) : wakeMs(day + 1);
    }
}
