package limbway.reports.measure;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.OptionalInt;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Site;
import limbway.model.light.SunPosition;
import limbway.reports.ShadedYear;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Sums of a year made by hand, worked out from how it was made. */
@Tag("derived")
class ShadeMeasuresTest {

    private static final int MAR = 2;

    @Test
    void monthsAndHoursAddUpToTheYear() {
        ShadeByHour shade = ShadeByHour.of(ShadedYear.broken());
        int sun = 0;
        int breach = 0;
        for (int month = 0; month < ShadeByHour.MONTHS; month++) {
            for (int hour = 0; hour < ShadeByHour.HOURS; hour++) {
                sun += shade.sunMinutes(month, hour);
                breach += shade.breachMinutes(month, hour);
            }
        }
        assertEquals(ShadedYear.SUN_MINUTES, sun);
        assertEquals(ShadedYear.BREACH_MINUTES, breach);
        assertArrayEquals(new int[] {8, 9, 10, 11, 12, 13, 14, 15}, shade.hoursWithSun());
        assertArrayEquals(new int[] {10, 11, 12, 13, 14, 15}, shade.hoursInBreach());
        assertArrayEquals(new int[0], ShadeByHour.of(ShadedYear.kept()).hoursInBreach());
    }

    @Test
    void theFewestOfAnHourIsThatOfItsWorstMoment() {
        ShadeByHour shade = ShadeByHour.of(ShadedYear.broken());
        assertEquals(OptionalInt.of(2), shade.fewest(0, 10));
        assertEquals(OptionalInt.of(1), shade.fewest(MAR, 10));
        assertEquals(OptionalInt.of(1), shade.fewest(0, 12));
        assertEquals(OptionalInt.empty(), shade.fewest(0, 7));
        assertEquals(60, shade.breachMinutes(MAR, 10));
        // of 31 days one without the second platform
        assertEquals(30 / 31.0, shade.shadedShare(1, MAR, 10), 1e-12);
    }

    @Test
    void aPlatformEndsTheBreachInWhichItIsTheOneThatIsMissing() {
        List<PlatformShade> platforms = PlatformShade.of(ShadedYear.broken());
        PlatformShade east = platforms.get(0);
        assertEquals(365 * 4 * 60, east.shadedMinutes());
        assertEquals(0.5, east.share(), 1e-12);
        assertEquals(0.5, east.share(MAR), 1e-12);
        // shaded on the morning of the slip, in the sun every afternoon
        assertEquals(365 * 4 * 60, east.mendedMinutes());
        assertEquals(120, platforms.get(1).mendedMinutes());
        assertEquals(ShadedYear.BREACH_MINUTES, platforms.get(2).mendedMinutes());
        assertTrue(PlatformShade.of(ShadedYear.kept()).stream().allMatch(p -> p.mendedMinutes() == 0));
    }

    @Test
    void theHardestDayIsTheOneWithMostBreachOrElseWithFewestInShade() {
        DayShade broken = DayShade.hardest(DayShade.of(ShadedYear.broken()));
        assertEquals(new DayShade(LocalDate.of(2026, 3, 24), 480, 360, 1, 360), broken);
        // kept: one in shade for four hours on every day, and for six on the day of the slip
        DayShade kept = DayShade.hardest(DayShade.of(ShadedYear.kept()));
        assertEquals(new DayShade(LocalDate.of(2026, 3, 24), 480, 0, 1, 360), kept);
    }

    @Test
    void patchesOfTheSkyHoldAllTheTimeAndAllTheBreach() {
        Site site = new Site(1.5, 110.5, ZoneOffset.ofHours(8));
        List<SkyPatch> patches = SkyPatch.of(site, ShadedYear.broken());
        assertEquals(
                ShadedYear.SUN_MINUTES,
                patches.stream().mapToInt(SkyPatch::sunMinutes).sum());
        assertEquals(
                ShadedYear.BREACH_MINUTES,
                patches.stream().mapToInt(SkyPatch::breachMinutes).sum());
        // in the tropics the afternoon sun stands in the west
        assertTrue(patches.stream()
                .filter(patch -> patch.breachShare() == 1 && patch.altitudeDeg() < 60)
                .allMatch(patch -> patch.azimuthDeg() >= 180));
    }

    @Test
    void pathsOfTheSunAreThoseOfSolsticesAndEquinoxes() {
        Site site = new Site(48, 11, ZoneOffset.ofHours(1));
        List<SunPath> days = SunPath.ofDays(site, 2026);
        double[] highestDeg = days.stream()
                .mapToDouble(path -> path.positions().stream()
                        .mapToDouble(SunPosition::altitudeDeg)
                        .max()
                        .orElseThrow())
                .toArray();
        assertEquals(7, highestDeg.length);
        // noon altitude 90 - 48 -+ 23.44; the nearest of moments every 5 min is up to 0.01 degrees lower
        assertEquals(90 - 48 - 23.44, highestDeg[0], 0.02);
        assertEquals(90 - 48 + 23.44, highestDeg[6], 0.02);
        List<SunPath> hours = SunPath.ofHours(site, 2026);
        // up from about 4:16 to 20:19 at midsummer
        assertEquals(5, hours.get(0).hour());
        assertEquals(20, hours.get(hours.size() - 1).hour());
    }
}
