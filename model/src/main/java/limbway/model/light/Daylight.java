package limbway.model.light;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;

import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SunriseResult;

import limbway.model.enclosure.Site;

/**
 * The light part of one day at one site, in clock time.
 *
 * <p>Where the sun does not rise or does not set, the day is taken as 06:00 to 18:00, because apes keep hours in the
 * polar summer too; this is an assumption, and no enclosure for apes is known there. A day does not reach over midnight:
 * where the sun sets after it, as in the north near midsummer, or rises before it, as by clocks of a far time zone, the day
 * is cut off there.
 *
 * @param sunrise clock time of sunrise
 * @param sunset clock time of sunset, later than sunrise
 */
public record Daylight(LocalTime sunrise, LocalTime sunset) {

    /**
     * Sunrise and sunset, the upper edge of the sun on a level horizon.
     *
     * @param site where
     * @param date day in the site's time zone
     * @return the two times
     * @source Reda and Andreas, Solar Position Algorithm, NREL/TP-560-34302 (rev. 2008), by the library solarpositioning
     */
    public static Daylight of(Site site, LocalDate date) {
        // noon of the site's own day: with another zone the library would answer for another day
        ZonedDateTime noon = date.atTime(12, 0).atZone(site.zone());
        SunriseResult result =
                SPA.calculateSunriseTransitSet(noon, site.latitudeDeg(), site.longitudeDeg(), DeltaT.estimate(date));
        if (result instanceof SunriseResult.RegularDay day) {
            LocalTime rise = clock(day.sunrise(), site);
            LocalTime noonBySun = clock(day.transit(), site);
            LocalTime set = clock(day.sunset(), site);
            return new Daylight(
                    rise.isAfter(noonBySun) ? LocalTime.MIDNIGHT : rise, set.isBefore(noonBySun) ? LocalTime.MAX : set);
        }
        return new Daylight(LocalTime.of(6, 0), LocalTime.of(18, 0));
    }

    private static LocalTime clock(ZonedDateTime moment, Site site) {
        return moment.withZoneSameInstant(site.zone()).toLocalTime();
    }
}
