package limbway.reports.replay;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.enclosure.Site;
import limbway.model.light.SunPosition;

/** Where the sun stands on day 1, by the clock on the wall, as the hours of the animals are. */
final class SunEntry {

    private static final int EVERY_MIN = 10;
    private static final int MIN_PER_DAY = 24 * 60;

    private SunEntry() {}

    static Map<String, Object> of(Site site, LocalDate date) {
        // one offset for all the day: a change of summer time is not played
        ZoneOffset offset = site.zone().getRules().getOffset(date.atTime(LocalTime.NOON));
        Instant midnight = date.atStartOfDay().toInstant(offset);
        List<Double> azimuth = new ArrayList<>();
        List<Double> elevation = new ArrayList<>();
        for (int minute = 0; minute <= MIN_PER_DAY; minute += EVERY_MIN) {
            SunPosition sun = SunPosition.at(site, midnight.plusSeconds(60L * minute));
            azimuth.add(Math.rint(sun.azimuthDeg() * 100) / 100);
            elevation.add(Math.rint(sun.altitudeDeg() * 100) / 100);
        }
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("everyMin", EVERY_MIN);
        entry.put("azimuthDeg", azimuth);
        entry.put("elevationDeg", elevation);
        return entry;
    }
}
