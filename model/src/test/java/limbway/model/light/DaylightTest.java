package limbway.model.light;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import limbway.model.enclosure.Site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class DaylightTest {

    /**
     * Rise and set of 2020 from the US Naval Observatory's tables, printed to the minute in universal time, here in the
     * clock time of the given offset; the rows are among the test data of the library solarpositioning.
     */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({
        "1.2833, 103.8333, 8, 2020-01-05, 07:09, 19:11",
        "1.2833, 103.8333, 8, 2020-06-25, 07:02, 19:13",
        "1.2833, 103.8333, 8, 2020-12-25, 07:04, 19:06",
        "-36.8333, 174.8, 12, 2020-06-25, 07:34, 17:13"
    })
    void risesAndSetsWithTheAlmanac(
            double latitudeDeg, double longitudeDeg, int offset, LocalDate date, LocalTime rise, LocalTime set) {
        Site site = new Site(latitudeDeg, longitudeDeg, ZoneOffset.ofHours(offset));
        Daylight day = Daylight.of(site, date);
        // half a minute of rounding in the table, and half a minute between its method and ours
        assertWithin(rise, day.sunrise(), 60);
        assertWithin(set, day.sunset(), 60);
    }

    /** At 110.5 degrees east noon in universal time belongs to the evening: the site's own day must be asked for. */
    @Test
    @Tag("derived")
    void answersForTheDayOfTheSite() {
        Site site = new Site(1.5, 110.5, ZoneId.of("Asia/Kuching"));
        Daylight day = Daylight.of(site, LocalDate.of(2026, 6, 21));
        // 06:33:27 and 18:46:03 by an independent run of the algorithm; the library cuts fractions of a second
        assertWithin(LocalTime.of(6, 33, 27), day.sunrise(), 1);
        assertWithin(LocalTime.of(18, 46, 3), day.sunset(), 1);
    }

    @Test
    void takesACommonDayWhereTheSunDoesNotSet() {
        Daylight day = Daylight.of(new Site(70, 25, ZoneOffset.ofHours(2)), LocalDate.of(2026, 6, 21));
        assertEquals(new Daylight(LocalTime.of(6, 0), LocalTime.of(18, 0)), day);
    }

    /** At 64.1° N, 21.9° W by clocks of UTC the sun sets two minutes past midnight: the day lasts to the end of the date. */
    @Test
    @Tag("derived")
    void aSunThatSetsAfterMidnightShinesUntilMidnight() {
        Daylight light = Daylight.of(new Site(64.1, -21.9, ZoneId.of("UTC")), LocalDate.of(2026, 6, 21));
        assertEquals(LocalTime.of(2, 56), light.sunrise().withSecond(0).withNano(0));
        assertEquals(LocalTime.MAX, light.sunset());
    }

    /** At 110.5° E by clocks of UTC the sun rises at 22:41 of the date before: the day lasts from the start of the date. */
    @Test
    @Tag("derived")
    void aSunThatRoseBeforeMidnightShinesFromMidnight() {
        Daylight light = Daylight.of(new Site(1.5, 110.5, ZoneId.of("UTC")), LocalDate.of(2026, 3, 21));
        assertEquals(LocalTime.MIDNIGHT, light.sunrise());
        assertEquals(LocalTime.of(10, 48), light.sunset().withSecond(0).withNano(0));
    }

    private static void assertWithin(LocalTime expected, LocalTime actual, long seconds) {
        long apart = Math.abs(Duration.between(expected, actual).toSeconds());
        assertTrue(apart <= seconds, expected + " expected, " + actual + " found");
    }
}
