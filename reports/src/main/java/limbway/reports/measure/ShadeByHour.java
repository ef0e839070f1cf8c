package limbway.reports.measure;

import java.util.Arrays;
import java.util.OptionalInt;
import java.util.stream.IntStream;

import limbway.model.shade.ShadeYear;

/**
 * A year of shade by month and hour: how much sun there is, how few platforms lie in shade, how long they are too few.
 *
 * <p>Months run from 0 for January, hours from 0 for the hour after midnight, in standard time of the site.
 */
public final class ShadeByHour {

    /** Months of a year. */
    public static final int MONTHS = 12;

    /** Hours of a day. */
    public static final int HOURS = 24;

    private final int[][] sunMinutes = new int[MONTHS][HOURS];
    private final int[][] fewest = new int[MONTHS][HOURS];
    private final int[][] breachMinutes;
    private final int[][][] shadedMinutes;

    private ShadeByHour(ShadeYear year) {
        this.breachMinutes = year.breachMinutesByMonthAndHour();
        this.shadedMinutes = new int[year.platforms().size()][MONTHS][HOURS];
        int stepMin = year.calendar().stepMin();
        for (int[] month : fewest) {
            Arrays.fill(month, year.platforms().size());
        }
        for (int day = 0; day < year.calendar().days(); day++) {
            int month = year.calendar().date(day).getMonthValue() - 1;
            for (int slot = 0; slot < year.calendar().slots(); slot++) {
                if (year.isSunUp(day, slot)) {
                    add(year, day, slot, month, slot * stepMin / 60);
                }
            }
        }
    }

    /**
     * Gathers a year.
     *
     * @param year which platforms lay in shade when
     * @return the same by month and hour
     */
    public static ShadeByHour of(ShadeYear year) {
        return new ShadeByHour(year);
    }

    private void add(ShadeYear year, int day, int slot, int month, int hour) {
        int stepMin = year.calendar().stepMin();
        sunMinutes[month][hour] += stepMin;
        fewest[month][hour] = Math.min(fewest[month][hour], year.shadedCount(day, slot));
        for (int platform = 0; platform < shadedMinutes.length; platform++) {
            shadedMinutes[platform][month][hour] += year.isShaded(platform, day, slot) ? stepMin : 0;
        }
    }

    /**
     * Time with sun.
     *
     * @param month 0 to 11
     * @param hour 0 to 23
     * @return minutes of all days of the month
     */
    public int sunMinutes(int month, int hour) {
        return sunMinutes[month][hour];
    }

    /**
     * Fewest platforms in shade at once at any moment with sun.
     *
     * @param month 0 to 11
     * @param hour 0 to 23
     * @return a count; empty where there is no sun
     */
    public OptionalInt fewest(int month, int hour) {
        return sunMinutes[month][hour] == 0 ? OptionalInt.empty() : OptionalInt.of(fewest[month][hour]);
    }

    /**
     * Time with too few platforms in shade.
     *
     * @param month 0 to 11
     * @param hour 0 to 23
     * @return minutes of all days of the month
     */
    public int breachMinutes(int month, int hour) {
        return breachMinutes[month][hour];
    }

    /**
     * Share of the time with sun in which a platform lies in shade.
     *
     * @param platform its place in the year's list
     * @param month 0 to 11
     * @param hour 0 to 23
     * @return 0 to 1; not a number where there is no sun
     */
    public double shadedShare(int platform, int month, int hour) {
        return (double) shadedMinutes[platform][month][hour] / sunMinutes[month][hour];
    }

    /**
     * Hours of the day with sun in some month.
     *
     * @return hours in order; empty where the sun never stands high enough
     */
    public int[] hoursWithSun() {
        return hours(sunMinutes);
    }

    /**
     * Hours of the day with too few platforms in shade in some month.
     *
     * @return hours in order; empty if the rule is kept
     */
    public int[] hoursInBreach() {
        return hours(breachMinutes);
    }

    private static int[] hours(int[][] minutes) {
        return IntStream.range(0, HOURS)
                .filter(hour -> IntStream.range(0, MONTHS).anyMatch(month -> minutes[month][hour] > 0))
                .toArray();
    }
}
