package limbway.model.shade;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;

import limbway.model.enclosure.Site;

/**
 * The moments of a year at which shade is looked at: every day in equal steps from midnight, in the standard time of the
 * site. Summer time is left out, so that a row of a chart is the same hour of the sun all the year.
 *
 * @param year calendar year, 1900 to 2200
 * @param stepMin minutes from one moment to the next, 1 to 60, dividing 60
 * @param offset standard time of the site
 */
public record ShadeCalendar(int year, int stepMin, ZoneOffset offset) {

    /**
     * Checks year and step.
     *
     * @throws IllegalArgumentException naming the value outside its range
     */
    public ShadeCalendar {
        if (year < 1900 || year > 2200) {
            throw new IllegalArgumentException("shade calendar: year = " + year + ", allowed 1900 to 2200");
        }
        if (stepMin < 1 || stepMin > 60 || 60 % stepMin != 0) {
            throw new IllegalArgumentException(
                    "shade calendar: stepMin = " + stepMin + ", allowed a divisor of 60, such as 5, 15 or 60");
        }
    }

    /**
     * The calendar of a site.
     *
     * @param site where
     * @param year calendar year, 1900 to 2200
     * @param stepMin minutes from one moment to the next, dividing 60
     * @return its calendar
     */
    public static ShadeCalendar of(Site site, int year, int stepMin) {
        Instant midyear = LocalDate.of(year, 7, 1).atStartOfDay(ZoneOffset.UTC).toInstant();
        return new ShadeCalendar(year, stepMin, site.zone().getRules().getStandardOffset(midyear));
    }

    /**
     * Days of the year.
     *
     * @return 365 or 366
     */
    public int days() {
        return LocalDate.of(year, 12, 31).getDayOfYear();
    }

    /**
     * Moments of one day.
     *
     * @return 24 to 1440
     */
    public int slots() {
        return 24 * 60 / stepMin;
    }

    /**
     * The date of a day.
     *
     * @param day 0 for the first of January
     * @return a date of the year
     */
    public LocalDate date(int day) {
        return LocalDate.ofYearDay(year, day + 1);
    }

    /**
     * One moment.
     *
     * @param day 0 for the first of January
     * @param slot 0 for midnight, up to {@code slots() - 1}
     * @return when that is
     */
    public Instant moment(int day, int slot) {
        return date(day).atStartOfDay(offset).plusMinutes((long) slot * stepMin).toInstant();
    }
}
