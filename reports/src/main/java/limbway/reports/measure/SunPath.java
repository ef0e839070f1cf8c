package limbway.reports.measure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Site;
import limbway.model.light.SunPosition;
import limbway.model.shade.ShadeCalendar;

/**
 * A line of positions of the sun above the level: of one day, or of one hour through the year.
 *
 * @param month month of the day, 1 to 12; 0 for the line of an hour
 * @param hour hour of standard time; -1 for the line of a day
 * @param positions positions in order of time, all above the level
 */
public record SunPath(int month, int hour, List<SunPosition> positions) {

    /** Around this day of a month fall the solstices and equinoxes. */
    public static final int DAY_OF_MONTH = 21;

    private static final int DAY_STEP_MIN = 5;
    private static final int HOUR_STEP_DAYS = 4;

    /** Keeps a copy of the list. */
    public SunPath {
        positions = List.copyOf(positions);
    }

    /**
     * The sun on the 21st of each month from December to June; from July to November it goes nearly the same ways back.
     *
     * @param site where
     * @param year calendar year
     * @return a line for each of the seven months; empty of positions where the sun does not rise
     */
    public static List<SunPath> ofDays(Site site, int year) {
        ShadeCalendar calendar = ShadeCalendar.of(site, year, DAY_STEP_MIN);
        List<SunPath> paths = new ArrayList<>();
        for (int month : new int[] {12, 1, 2, 3, 4, 5, 6}) {
            int day = LocalDate.of(year, month, DAY_OF_MONTH).getDayOfYear() - 1;
            List<SunPosition> positions = new ArrayList<>();
            for (int slot = 0; slot < calendar.slots(); slot++) {
                addIfUp(positions, SunPosition.at(site, calendar.moment(day, slot)));
            }
            paths.add(new SunPath(month, -1, positions));
        }
        return paths;
    }

    /**
     * The sun at each full hour of standard time, through the year.
     *
     * @param site where
     * @param year calendar year
     * @return a line for each hour at which the sun is up on some day
     */
    public static List<SunPath> ofHours(Site site, int year) {
        ShadeCalendar calendar = ShadeCalendar.of(site, year, 60);
        List<SunPath> paths = new ArrayList<>();
        for (int hour = 0; hour < calendar.slots(); hour++) {
            List<SunPosition> positions = new ArrayList<>();
            for (int day = 0; day < calendar.days(); day += HOUR_STEP_DAYS) {
                addIfUp(positions, SunPosition.at(site, calendar.moment(day, hour)));
            }
            if (!positions.isEmpty()) {
                paths.add(new SunPath(0, hour, positions));
            }
        }
        return paths;
    }

    private static void addIfUp(List<SunPosition> positions, SunPosition position) {
        if (position.altitudeDeg() > 0) {
            positions.add(position);
        }
    }
}
