package limbway.model.light;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;

import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SunriseResult;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import limbway.model.enclosure.Horizon;
import limbway.model.enclosure.Site;
import limbway.model.geometry.Point;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class SunPositionTest {

    private static final ZonedDateTime EXAMPLE_TIME =
            ZonedDateTime.of(2003, 10, 17, 12, 30, 30, 0, ZoneOffset.ofHours(-7));
    private static final Site EXAMPLE_SITE =
            new Site(39.742476, -105.1786, ZoneOffset.ofHours(-7), 1830.14, Horizon.LEVEL);
    private static final Site TROPICS = new Site(1.5, 110.5, ZoneOffset.ofHours(8));
    private static final Site MIDDLE = new Site(48, 11, ZoneOffset.ofHours(1));

    /** Reda and Andreas, NREL/TP-560-34302, table A5.1: with pressure, temperature and the report's own delta T. */
    @Test
    @Tag("published")
    void theLibraryMatchesTheWorkedExampleToTheLastDigit() {
        var sun = SPA.calculateSolarPosition(EXAMPLE_TIME, 39.742476, -105.1786, 1830.14, 67, 820, 11);
        // half a unit of the last printed digit
        assertEquals(50.11162, sun.zenithAngle(), 5e-6);
        assertEquals(194.34024, sun.azimuth(), 5e-6);
    }

    /** The same table, e0: altitude before refraction. */
    @Test
    @Tag("published")
    void ourOwnEntryGivesTheAltitudeBeforeRefraction() {
        SunPosition sun = SunPosition.at(EXAMPLE_SITE, EXAMPLE_TIME.toInstant());
        // We estimate delta T for the year, 2.5 s less than the report takes; the sun moves 2.9e-5 degrees in 2.5 s.
        assertEquals(39.872046, sun.altitudeDeg(), 3e-5);
        assertEquals(194.34024, sun.azimuthDeg(), 5e-5);
    }

    /** The same table, incidence on a surface that leans 30 degrees towards 10 degrees east of south. */
    @Test
    @Tag("published")
    void theDirectionGivesTheIncidenceOfTheWorkedExample() {
        Point sun = new SunPosition(194.34024, 90 - 50.11162).direction();
        Point normal = new SunPosition(170, 60).direction();
        // both angles are printed to five decimals, which moves the result by up to a unit of the fifth
        assertEquals(25.18700, Math.toDegrees(Math.acos(sun.dot(normal))), 1e-5);
    }

    /** The same report: sunrise and sunset at longitude 0 with delta T 64 s, as the test data of a public library give them. */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({
        "35, 1994-01-02T07:08:12, 1994-01-02T16:59:55",
        "-35, 1996-07-05T07:08:15, 1996-07-05T17:01:04",
        "-35, 2004-12-04T04:38:57, 2004-12-04T19:02:02"
    })
    void risesAndSetsWithTheReport(double latitudeDeg, LocalDateTime rise, LocalDateTime set) {
        ZonedDateTime noon = rise.toLocalDate().atTime(12, 0).atZone(ZoneOffset.UTC);
        var day = (SunriseResult.RegularDay) SPA.calculateSunriseTransitSet(noon, latitudeDeg, 0, 64);
        // the library cuts fractions of a second, the report rounds
        assertTrue(Math.abs(seconds(rise) - day.sunrise().toEpochSecond()) <= 1, () -> "rises " + day.sunrise());
        assertTrue(Math.abs(seconds(set) - day.sunset().toEpochSecond()) <= 1, () -> "sets " + day.sunset());
    }

    private static long seconds(LocalDateTime universal) {
        return universal.toEpochSecond(ZoneOffset.UTC);
    }

    /** US Naval Observatory, 2020: at the printed minute the upper edge, lifted by refraction, stands on the horizon. */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({
        "1.2833, 103.8333, 2020-01-04T23:09:00Z",
        "1.2833, 103.8333, 2020-01-05T11:11:00Z",
        "1.2833, 103.8333, 2020-06-24T23:02:00Z",
        "1.2833, 103.8333, 2020-06-25T11:13:00Z",
        "1.2833, 103.8333, 2020-12-24T23:04:00Z",
        "1.2833, 103.8333, 2020-12-25T11:06:00Z",
        "-36.8333, 174.8, 2020-06-24T19:34:00Z",
        "-36.8333, 174.8, 2020-06-25T05:13:00Z"
    })
    void standsOnTheHorizonWhenTheAlmanacSaysSo(double latitudeDeg, double longitudeDeg, Instant printed) {
        SunPosition sun = SunPosition.at(new Site(latitudeDeg, longitudeDeg, ZoneOffset.UTC), printed);
        // 34' of refraction and 16' of half the sun; half a minute of rounding and half a minute between the methods at
        // a
        // quarter of a degree a minute
        assertEquals(-0.833, sun.altitudeDeg(), 0.25);
    }

    /** An independent run of the Solar Position Algorithm in another language, no refraction, delta T 72 s. */
    @ParameterizedTest
    @Tag("derived")
    @CsvSource({
        "true, 2026-03-20T09:00, 33.5847, 91.2686",
        "true, 2026-03-20T12:00, 78.4941, 98.2886",
        "true, 2026-03-20T15:00, 56.3373, 267.5156",
        "true, 2026-06-21T09:00, 32.5055, 62.9272",
        "true, 2026-06-21T12:00, 66.0395, 22.9451",
        "true, 2026-06-21T15:00, 49.5682, 305.6478",
        "true, 2026-12-21T09:00, 31.9514, 119.0270",
        "true, 2026-12-21T12:00, 63.5785, 161.2354",
        "true, 2026-12-21T15:00, 47.0123, 232.2928",
        "false, 2026-06-21T09:00, 44.0053, 104.2590",
        "false, 2026-06-21T12:00, 65.1828, 170.2301",
        "false, 2026-06-21T15:00, 49.6510, 247.0929",
        "false, 2026-12-21T09:00, 6.3859, 136.2578",
        "false, 2026-12-21T12:00, 18.4912, 176.6034",
        "false, 2026-12-21T15:00, 9.4606, 218.0258"
    })
    void agreesWithAnIndependentRun(boolean tropics, LocalDateTime clock, double altitudeDeg, double azimuthDeg) {
        Site site = tropics ? TROPICS : MIDDLE;
        SunPosition sun = SunPosition.at(site, clock.atZone(site.zone()).toInstant());
        Point expected = new SunPosition(azimuthDeg, altitudeDeg).direction();
        // as directions, since azimuth means little near the zenith: four printed decimals (5e-5 degrees in each angle)
        // and
        // up to 3 s of delta T (4e-5 degrees)
        assertEquals(0, Math.toDegrees(sun.direction().distanceM(expected)), 1.2e-4);
    }

    @Test
    @Tag("derived")
    void risesAndSetsAtMidsummerInTheMiddleLatitudes() {
        Daylight day = Daylight.of(MIDDLE, LocalDate.of(2026, 6, 21));
        // 04:16:22 and 20:19:15 by the independent run, fractions of a second cut
        assertEquals(4 * 3600 + 16 * 60 + 22, day.sunrise().toSecondOfDay(), 1);
        assertEquals(20 * 3600 + 19 * 60 + 15, day.sunset().toSecondOfDay(), 1);
    }

    /** 90 - |latitude - declination|: inside the tropics the noon sun of June stands north, lower than at the zenith. */
    @Test
    @Tag("derived")
    void standsNorthAtNoonInTheTropicsInJune() {
        SunPosition noon = highest(TROPICS, LocalDate.of(2026, 6, 21));
        // 90 - (23.4379 - 1.5) = 68.062, less up to 0.0024 of parallax; a search by seconds adds nothing visible
        assertEquals(68.062, noon.altitudeDeg(), 0.003);
        // within half a second of noon the azimuth turns by 0.006 degrees at this height
        assertEquals(0, Math.sin(Math.toRadians(noon.azimuthDeg())), 2e-4);
        assertTrue(Math.cos(Math.toRadians(noon.azimuthDeg())) > 0, "north");
        SunPosition december = highest(TROPICS, LocalDate.of(2026, 12, 21));
        assertEquals(90 - (23.4379 + 1.5), december.altitudeDeg(), 0.003);
        assertTrue(Math.cos(Math.toRadians(december.azimuthDeg())) < 0, "south");
    }

    /** Outside the tropics the noon altitude of midsummer is 90 - latitude + 23.44. */
    @Test
    @Tag("derived")
    void standsHighestAtMidsummerOutsideTheTropics() {
        assertEquals(
                90 - 48 + 23.4379, highest(MIDDLE, LocalDate.of(2026, 6, 21)).altitudeDeg(), 0.003);
    }

    private static SunPosition highest(Site site, LocalDate date) {
        long start = date.atTime(11, 0).atZone(site.zone()).toEpochSecond();
        SunPosition best = SunPosition.at(site, Instant.ofEpochSecond(start));
        for (int s = 1; s < 7200; s++) {
            SunPosition sun = SunPosition.at(site, Instant.ofEpochSecond(start + s));
            best = sun.altitudeDeg() > best.altitudeDeg() ? sun : best;
        }
        return best;
    }

    /** 2/15 acos(-tan latitude tan declination); with the sun's edge and refraction the cosine rule for -0.833 degrees. */
    @ParameterizedTest
    @Tag("derived")
    @CsvSource({"51.48, 0, 16.3999, 16.634", "0, 0, 12, 12.121"})
    void theDayIsAsLongAsTheTextbookSays(double latitudeDeg, double longitudeDeg, double geometricH, double visibleH) {
        Site site = new Site(latitudeDeg, longitudeDeg, ZoneOffset.UTC);
        LocalDate date = LocalDate.of(2026, 6, 21);
        double first = crossing(site, date.atTime(0, 0), date.atTime(12, 0));
        double last = crossing(site, date.atTime(12, 0), date.atTime(23, 59));
        // the rule counts by the sun, whose noon comes 13 s later every day in June: up to 9 s (0.0025 h) in a long day
        assertEquals(geometricH, (last - first) / 3600, 0.0025);
        Daylight day = Daylight.of(site, date);
        double dayH = (day.sunset().toSecondOfDay() - day.sunrise().toSecondOfDay()) / 3600.0;
        // the same 9 s, and whole seconds
        assertEquals(visibleH, dayH, 0.003);
    }

    private static double crossing(Site site, LocalDateTime from, LocalDateTime to) {
        long low = seconds(from);
        long high = seconds(to);
        boolean upAtLow = SunPosition.at(site, Instant.ofEpochSecond(low)).altitudeDeg() > 0;
        while (high - low > 1) {
            long middle = (low + high) / 2;
            boolean up = SunPosition.at(site, Instant.ofEpochSecond(middle)).altitudeDeg() > 0;
            if (up == upAtLow) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
