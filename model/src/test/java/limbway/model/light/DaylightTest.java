package limbway.model.light;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Site;

import static org.junit.jupiter.api.Assertions.assertEquals;

@Tag("derived")
class DaylightTest {

    private static final LocalDate MIDSUMMER = LocalDate.of(2026, 6, 21);

    /** At 64.1° N, 21.9° W by clocks of UTC the sun sets two minutes past midnight: the day lasts to the end of the date. */
    @Test
    void aSunThatSetsAfterMidnightShinesUntilMidnight() {
        Daylight light = Daylight.of(new Site(64.1, -21.9, ZoneId.of("UTC")), MIDSUMMER);
        assertEquals(LocalTime.of(2, 56), light.sunrise().withSecond(0).withNano(0));
        assertEquals(LocalTime.MAX, light.sunset());
    }

    /** At 110.5° E by clocks of UTC the sun rises at 22:41 of the date before: the day lasts from the start of the date. */
    @Test
    void aSunThatRoseBeforeMidnightShinesFromMidnight() {
        Daylight light = Daylight.of(new Site(1.5, 110.5, ZoneId.of("UTC")), LocalDate.of(2026, 3, 21));
        assertEquals(LocalTime.MIDNIGHT, light.sunrise());
        assertEquals(LocalTime.of(10, 48), light.sunset().withSecond(0).withNano(0));
    }

    @Test
    void whereTheSunDoesNotSetTheDayIsTakenAsTwelveHours() {
        Daylight light = Daylight.of(new Site(80, 20, ZoneId.of("Europe/Oslo")), MIDSUMMER);
        assertEquals(new Daylight(LocalTime.of(6, 0), LocalTime.of(18, 0)), light);
    }
}
