package limbway.model.shade;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Horizon;
import limbway.model.enclosure.Site;
import limbway.model.geometry.Point;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Measures of a year made by hand, and the moments it is looked at. */
class ShadeYearTest {

    private static final ShadeCalendar CALENDAR = new ShadeCalendar(2026, 30, ZoneOffset.UTC);

    private final BitSet up = new BitSet();
    private final BitSet east = new BitSet();
    private final BitSet west = new BitSet();

    private void moment(int day, int slot, boolean eastShaded, boolean westShaded) {
        int number = day * 48 + slot;
        up.set(number);
        east.set(number, eastShaded);
        west.set(number, westShaded);
    }

    private ShadeYear year() {
        return new ShadeYear(CALENDAR, ShadeRule.standard(), List.of("east", "west"), up, List.of(east, west));
    }

    /** Two platforms wanted of two. One breach on 3 January 12:00, two on 1 March 09:30 and 10:00, shade on 1 July. */
    @Test
    @Tag("derived")
    void theMeasuresOfAYearMadeByHand() {
        moment(2, 24, true, false);
        moment(2, 25, true, true);
        moment(59, 19, false, false);
        moment(59, 20, false, true);
        moment(181, 24, true, true);
        ShadeYear year = year();
        assertEquals(5 * 30, year.sunMinutes());
        assertEquals(90, year.breachMinutes());
        assertEquals(60, year.breachMinutes(59));
        assertEquals(0, year.fewestShaded());
        assertEquals(Optional.of(LocalDateTime.of(2026, 1, 3, 12, 0)), year.firstBreach());
        assertEquals(Optional.of(LocalDate.of(2026, 3, 1)), year.worstDay());
        int[][] cells = year.breachMinutesByMonthAndHour();
        assertEquals(30, cells[0][12]);
        assertEquals(30, cells[2][9]);
        assertEquals(30, cells[2][10]);
        assertArrayEquals(new int[] {60, 0, 0, 0, 0, 0, 30, 0, 0, 0, 0, 0}, year.shadedMinutesByMonth(0));
        assertArrayEquals(new int[] {30, 0, 30, 0, 0, 0, 30, 0, 0, 0, 0, 0}, year.shadedMinutesByMonth(1));
        assertArrayEquals(new int[] {60, 0, 60, 0, 0, 0, 30, 0, 0, 0, 0, 0}, year.sunMinutesByMonth());
        assertFalse(year.isBreach(59, 21), "no sun, no breach");
    }

    @Test
    void aYearThatKeepsTheRuleHasNoFirstBreachAndNoWorstDay() {
        moment(0, 24, true, true);
        assertEquals(0, year().breachMinutes());
        assertEquals(2, year().fewestShaded());
        assertTrue(year().firstBreach().isEmpty());
        assertTrue(year().worstDay().isEmpty());
    }

    /** On 1 July the south has winter, the north summer time: either way the standard offset is what is asked for. */
    @ParameterizedTest
    @CsvSource({
        "Europe/Berlin, +01:00",
        "Europe/Dublin, Z",
        "America/Santiago, -04:00",
        "Australia/Sydney, +10:00",
        "Pacific/Auckland, +12:00",
        "Asia/Singapore, +08:00",
        "Australia/Adelaide, +09:30"
    })
    void momentsAreInStandardTimeAllTheYear(String zone, String offset) {
        ShadeCalendar calendar = ShadeCalendar.of(new Site(0, 0, ZoneId.of(zone)), 2026, 15);
        ZoneOffset standard = ZoneOffset.of(offset);
        assertEquals(standard, calendar.offset());
        for (int day = 0; day < calendar.days(); day++) {
            Instant noon = calendar.date(day).atTime(12, 0).toInstant(standard);
            assertEquals(noon, calendar.moment(day, 48));
        }
    }

    @Test
    void aLeapYearHasAllItsMoments() {
        ShadeCalendar calendar = new ShadeCalendar(2028, 5, ZoneOffset.UTC);
        assertEquals(366, calendar.days());
        assertEquals(288, calendar.slots());
        assertEquals(Instant.parse("2028-12-31T23:55:00Z"), calendar.moment(365, 287));
    }

    @Test
    void landThatHidesTheSunCountsAsShadeWhileTheRuleStillAsks() {
        Enclosure flat = Scene.yard(10, 10).deck("rest", 2, 2, 4, 4, 1).build();
        Horizon hill = new Horizon(List.of(new Horizon.Mark(0, 90)));
        Enclosure deep = new Enclosure(
                new Site(1.5, 110.5, ZoneOffset.ofHours(8), 0, hill),
                flat.ground(),
                flat.supports(),
                flat.platforms(),
                flat.crowns(),
                flat.resources());
        ShadeCalendar calendar = new ShadeCalendar(2026, 60, ZoneOffset.ofHours(8));
        ShadeYear open = audit(flat, calendar);
        ShadeYear hidden = audit(deep, calendar);
        assertEquals(open.sunMinutes(), hidden.sunMinutes());
        assertEquals(0, open.shadedCount(80, 12));
        assertEquals(1, hidden.fewestShaded());
    }

    /**
     * Near the pole the midsummer sun goes round at one height, 23.4 degrees: of four small decks north, east, south and west of a
     * thick mast, each is shaded when the sun stands on the other side, all day long and one after the other.
     */
    @Test
    @Tag("derived")
    void nearThePoleTheShadowOfAMastGoesRoundOnceADay() {
        Enclosure drawn = Scene.yard(20, 20)
                .beam("mast", 1.2, new Point(10, 10, 0), new Point(10, 10, 9))
                .deck("north", 9.9, 12.9, 10.1, 13.1, 1)
                .deck("east", 12.9, 9.9, 13.1, 10.1, 1)
                .deck("south", 9.9, 6.9, 10.1, 7.1, 1)
                .deck("west", 6.9, 9.9, 7.1, 10.1, 1)
                .build();
        Enclosure polar = new Enclosure(
                new Site(89.9, 0, ZoneOffset.UTC),
                drawn.ground(),
                drawn.supports(),
                drawn.platforms(),
                drawn.crowns(),
                drawn.resources());
        ShadeCalendar calendar = new ShadeCalendar(2026, 60, ZoneOffset.UTC);
        ShadeYear year = ShadeAudit.of(
                        polar,
                        ShadeSettings.standard(),
                        ShadeRule.standard(),
                        calendar,
                        List.of("north", "east", "south", "west"),
                        2,
                        ShadeProgress.NONE)
                .orElseThrow();
        int midsummer = 171;
        int[] sunOpposite = {12, 18, 0, 6};
        for (int slot = 0; slot < 24; slot++) {
            assertTrue(year.isSunUp(midsummer, slot));
            assertFalse(year.isSunUp(355, slot));
            for (int p = 0; p < 4; p++) {
                // 0.6 m of radius at 3 m hides 11.5 degrees either side, the equation of time is half a degree
                assertEquals(slot == sunOpposite[p], year.isShaded(p, midsummer, slot), p + " at " + slot);
            }
        }
    }

    private static ShadeYear audit(Enclosure enclosure, ShadeCalendar calendar) {
        return ShadeAudit.of(
                        enclosure,
                        ShadeSettings.standard(),
                        ShadeRule.standard(),
                        calendar,
                        List.of("rest"),
                        1,
                        ShadeProgress.NONE)
                .orElseThrow();
    }
}
