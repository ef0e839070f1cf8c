package limbway.reports.measure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import limbway.model.shade.ShadeYear;

/**
 * One day of a year of shade.
 *
 * @param date the day
 * @param sunMinutes time with sun
 * @param breachMinutes time with too few platforms in shade
 * @param fewest fewest platforms in shade at once while the sun is up; all of them on a day without sun
 * @param fewestMinutes time with so few
 */
public record DayShade(LocalDate date, int sunMinutes, int breachMinutes, int fewest, int fewestMinutes) {

    /**
     * Every day of a year.
     *
     * @param year which platforms lay in shade when
     * @return 365 or 366 days in order
     */
    public static List<DayShade> of(ShadeYear year) {
        List<DayShade> days = new ArrayList<>();
        for (int day = 0; day < year.calendar().days(); day++) {
            days.add(one(year, day));
        }
        return days;
    }

    private static DayShade one(ShadeYear year, int day) {
        int stepMin = year.calendar().stepMin();
        int sun = 0;
        int fewest = year.platforms().size();
        int fewestMinutes = 0;
        for (int slot = 0; slot < year.calendar().slots(); slot++) {
            if (!year.isSunUp(day, slot)) {
                continue;
            }
            sun += stepMin;
            int count = year.shadedCount(day, slot);
            fewestMinutes = count < fewest ? stepMin : count == fewest ? fewestMinutes + stepMin : fewestMinutes;
            fewest = Math.min(fewest, count);
        }
        return new DayShade(year.calendar().date(day), sun, year.breachMinutes(day), fewest, fewestMinutes);
    }

    /**
     * The day that is hardest to pass in shade: with the longest breach; without a breach, with the fewest platforms in shade
     * at once, for longest.
     *
     * @param days one day or more
     * @return the first of them if there are several
     */
    public static DayShade hardest(List<DayShade> days) {
        return days.stream()
                .min(Comparator.comparingInt((DayShade day) -> -day.breachMinutes)
                        .thenComparingInt(day -> day.breachMinutes > 0 ? 0 : day.fewest)
                        .thenComparingInt(day -> day.breachMinutes > 0 ? 0 : -day.fewestMinutes)
                        .thenComparing(DayShade::date))
                .orElseThrow();
    }
}
