package limbway.model.weather;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import limbway.model.enclosure.Site;
import limbway.model.light.ClearSky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class MonthlyWeatherTest {

    private static final List<Double> MAX = List.of(2.0, 4.0, 9.0, 14.0, 18.0, 22.0, 24.0, 23.0, 19.0, 13.0, 7.0, 3.0);
    private static final List<Double> MIN = List.of(-5.0, -4.0, -1.0, 3.0, 7.0, 11.0, 12.0, 12.0, 9.0, 5.0, 0.0, -4.0);
    private static final MonthlyWeather WEATHER = new MonthlyWeather(MAX, MIN, 0, 3);
    private static final Site MIDDLE = new Site(48, 11, ZoneId.of("Europe/Berlin"));

    @ParameterizedTest
    @Tag("derived")
    @CsvSource({
        // the 16th of a month of 31 days is its middle
        "2026-01-16, 2.0",
        "2026-07-16, 24.0",
        // half a day before the middle of June, which has 30: 22 - (22 - 18) x 0.5 / 30.5
        "2026-06-15, 21.934426",
        // 1 January: 15 days from its middle, 31 from there to the middle of December: 2 + (3 - 2) x 15 / 31
        "2026-01-01, 2.483871",
        // 29 February counts as the 28th: 13.5 of 29.5 days towards March: 4 + 5 x 13.5 / 29.5
        "2024-02-28, 6.288136",
        "2024-02-29, 6.288136"
    })
    void temperaturesRunStraightBetweenTheMiddlesOfMonths(LocalDate date, double greatestC) {
        // worked by hand to six decimals
        assertEquals(greatestC, MonthlyWeather.onDay(MAX, date), 5e-7);
    }

    @Test
    @Tag("derived")
    void aDayComesToItsGreatestAndLeast() {
        double least = 99;
        double greatest = -99;
        Instant start = Instant.parse("2026-07-15T23:00:00Z");
        for (int minute = 0; minute < 1440; minute++) {
            double airC =
                    WEATHER.at(MIDDLE, start.plus(Duration.ofMinutes(minute))).airC();
            least = Math.min(least, airC);
            greatest = Math.max(greatest, airC);
        }
        // 16 July has the values of its month; within a minute of the turning point nothing is missed but 1e-3 K, and
        // the
        // least belongs to the one day, the end of the night to the next
        assertEquals(12, least, 0.005);
        assertEquals(24, greatest, 0.001);
    }

    @ParameterizedTest
    @Tag("derived")
    @CsvSource({"48, 11", "-23.4, -179"})
    void theAirNeverJumps(double latitudeDeg, double longitudeDeg) {
        Site site = new Site(latitudeDeg, longitudeDeg, ZoneOffset.UTC);
        Instant moment = Instant.parse("2023-12-31T00:00:00Z");
        double before = WEATHER.at(site, moment).airC();
        for (int step = 0; step < 4 * 24 * 367; step++) {
            moment = moment.plus(Duration.ofMinutes(15));
            double now = WEATHER.at(site, moment).airC();
            // steepest after the shortest winter dawn: 12 K x pi / 11 h = 3.4 K/h, so 0.9 K in a quarter of an hour
            assertTrue(Math.abs(now - before) < 0.9, site + " " + moment + ": " + before + " to " + now);
            before = now;
        }
    }

    @Test
    @Tag("derived")
    void clocksDoNotMatter() {
        Site other = new Site(48, 11, ZoneId.of("Asia/Tokyo"));
        for (int hour = 0; hour < 24; hour++) {
            Instant moment = Instant.parse("2026-04-01T00:20:00Z").plus(Duration.ofHours(hour));
            assertEquals(WEATHER.at(MIDDLE, moment), WEATHER.at(other, moment));
        }
    }

    @Test
    @Tag("derived")
    void whereTheSunDoesNotRiseTheAirStaysAtTheMean() {
        Site north = new Site(75, 20, ZoneOffset.ofHours(1));
        // 16 January: (2 - 5) / 2
        assertEquals(
                -1.5, WEATHER.at(north, Instant.parse("2026-01-16T11:00:00Z")).airC(), 1e-9);
        assertEquals(
                -1.5, WEATHER.at(north, Instant.parse("2026-01-16T02:00:00Z")).airC(), 1e-9);
    }

    @Test
    void shinesAsUnderAClearSkyAndSaysSo() {
        Instant noon = Instant.parse("2026-06-21T11:20:00Z");
        assertEquals(new ClearSky(3).at(MIDDLE, noon), WEATHER.at(MIDDLE, noon).irradiance());
        assertEquals(
                "monthly means of temperature under a sky without clouds all year (the worst case)", WEATHER.origin());
    }

    @Test
    void windIsStillAirWhereNothingIsSaid() {
        assertEquals(0, MonthlyWeather.UNSTATED_WIND_M_PER_S);
        var listed = new MonthlyWeather(MAX, MIN, 1.5, 4).parameters();
        assertEquals(1.5, listed.get(0).value());
        assertEquals(4, listed.get(1).value());
    }

    @Test
    void refusesWhatIsNoYearOfMonths() {
        assertRefused("monthly weather: meanMaxC has 11 values, allowed 12", MAX.subList(0, 11), MIN, 0, 3);
        assertRefused("monthly weather: meanMinC has 0 values, allowed 12", MAX, List.of(), 0, 3);
        assertRefused(
                "monthly weather: month 1: meanMinC = 5.0, meanMaxC = 2.0, allowed -60 to 60, the least not above the"
                        + " greatest",
                MAX,
                Collections.nCopies(12, 5.0),
                0,
                3);
        assertRefused("monthly weather: windMPerS = -1.0, allowed 0 to 40", MAX, MIN, -1, 3);
        assertRefused("monthly weather: linkeTurbidity = 11.0, allowed 1 to 10", MAX, MIN, 0, 11);
        assertRefused("monthly weather: windMPerS = NaN, allowed 0 to 40", MAX, MIN, Double.NaN, 3);
    }

    private static void assertRefused(String message, List<Double> max, List<Double> min, double wind, double haze) {
        var refused = assertThrows(IllegalArgumentException.class, () -> new MonthlyWeather(max, min, wind, haze));
        assertEquals(message, refused.getMessage());
    }
}
