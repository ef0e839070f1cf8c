package limbway.reports.page;

import java.util.List;

import limbway.model.enclosure.Enclosure;
import limbway.model.shade.ShadeYear;
import limbway.reports.measure.ShadeMap;
import limbway.reports.measure.SkyPatch;
import limbway.reports.measure.SunPath;

/**
 * What only the page and its tables show of a year of shade, and a text does not.
 *
 * @param map hours of shade on ground and decks
 * @param days the sun on the 21st of months
 * @param hours the sun at each hour
 * @param patches where in the sky the sun stands, and where it finds too little shade
 */
public record ShadeViews(ShadeMap map, List<SunPath> days, List<SunPath> hours, List<SkyPatch> patches) {

    /** Keeps copies of the lists. */
    public ShadeViews {
        days = List.copyOf(days);
        hours = List.copyOf(hours);
        patches = List.copyOf(patches);
    }

    /**
     * Works the views of the sky out and adds a map.
     *
     * @param enclosure what stands there
     * @param year which platforms lay in shade when
     * @param map hours of shade on ground and decks
     * @return the views
     */
    public static ShadeViews of(Enclosure enclosure, ShadeYear year, ShadeMap map) {
        int calendarYear = year.calendar().year();
        return new ShadeViews(
                map,
                SunPath.ofDays(enclosure.site(), calendarYear),
                SunPath.ofHours(enclosure.site(), calendarYear),
                SkyPatch.of(enclosure.site(), year));
    }
}
