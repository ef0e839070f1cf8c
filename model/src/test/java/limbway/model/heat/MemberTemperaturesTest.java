package limbway.model.heat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.Site;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.light.SunPosition;
import limbway.model.scene.Scene;
import limbway.model.shade.ShadeScene;
import limbway.model.shade.ShadeSettings;
import limbway.model.weather.MonthlyWeather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

class MemberTemperaturesTest {

    private static final Site TROPICS = new Site(1.5, 110.5, ZoneOffset.ofHours(8));
    private static final LocalDate EQUINOX = LocalDate.of(2026, 3, 20);
    private static final HeatSettings SETTINGS = HeatSettings.standard();
    private static final MonthlyWeather WEATHER =
            new MonthlyWeather(Collections.nCopies(12, 32.0), Collections.nCopies(12, 24.0), 0.5, 4);

    private static Support bar(String id, Material material, Point from, Point to) {
        return new Support(id, SupportKind.BEAM, Polyline.straight(from, to), 0.0483, material);
    }

    private static Support level(Material material) {
        return bar("level", material, new Point(5, 2, 4), new Point(5, 8, 4));
    }

    private static Support upright() {
        return bar("upright", Material.GALVANISED_STEEL, new Point(2, 2, 0), new Point(2, 2, 6));
    }

    private static MemberTemperatures day(LightReach reach, Support... supports) {
        Scene scene = Scene.yard(10, 10);
        for (Support support : supports) {
            scene.add(support);
        }
        Enclosure built = scene.build();
        Enclosure here = new Enclosure(
                TROPICS, built.ground(), built.supports(), built.platforms(), built.crowns(), built.resources());
        return MemberTemperatures.of(here, SETTINGS, WEATHER, reach, EQUINOX);
    }

    private static LightReach reach(ToDoubleBiFunction<Point, Point> beam, ToDoubleFunction<Point> sky) {
        return new LightReach() {
            @Override
            public double beam(Point at, Point sunDirection) {
                return beam.applyAsDouble(at, sunDirection);
            }

            @Override
            public double sky(Point at) {
                return sky.applyAsDouble(at);
            }
        };
    }

    @Test
    @Tag("derived")
    void inTheOpenItIsTheBalanceOfTheHour() {
        MemberDay day =
                day(LightReach.OPEN, level(Material.GALVANISED_STEEL)).members().get(0);
        var moment = EQUINOX.atTime(10, 30).atZone(TROPICS.zone()).toInstant();
        SunPosition sun = SunPosition.at(TROPICS, moment);
        // the bar runs north, so the angle to the beam is by the northern part of its direction
        double north = sun.direction().yM();
        Exposure exposure = Exposure.of(
                SETTINGS, WEATHER.at(TROPICS, moment), 1, 1, Math.sqrt(1 - north * north), sun.altitudeDeg());
        double expected = new MemberBalance(0.0483, SurfaceCatalogue.GALVANISED_OXIDISED).surfaceC(exposure);
        // the accuracy asked of the root
        assertEquals(expected, day.meanC().get(10), 1e-6);
        assertEquals(expected, day.hottestC().get(10), 1e-6);
    }

    /** At noon of the equinox near the equator the sun shines along an upright pole and square on a level bar. */
    @Test
    @Tag("derived")
    void anUprightPoleIsHotInTheMorningAndALevelBarAtNoon() {
        MemberTemperatures day = day(LightReach.OPEN, upright(), level(Material.GALVANISED_STEEL));
        MemberDay pole = day.members().get(0);
        MemberDay bar = day.members().get(1);
        assertTrue(bar.meanC().get(12) > pole.meanC().get(12) + 10, bar + " against " + pole);
        assertTrue(pole.hottestHour() != 12);
        assertEquals("level", day.hottestFirst().get(0).supportId());
        // at night below the air of 24 °C or more: bars look at a cold sky
        assertTrue(bar.meanC().get(3)
                < WEATHER.at(
                                TROPICS,
                                EQUINOX.atTime(3, 30).atZone(TROPICS.zone()).toInstant())
                        .airC());
    }

    @Test
    @Tag("derived")
    void theMeanAlongItWeighsSunAndShade() {
        LightReach halfShade = reach((at, sunDirection) -> at.yM() < 4.5 ? 1 : 0, at -> 1);
        LightReach shade = reach((at, sunDirection) -> 0, at -> 1);
        Support bar = level(Material.PAINTED_STEEL);
        MemberDay mixed = day(halfShade, bar).members().get(0);
        MemberDay open = day(LightReach.OPEN, bar).members().get(0);
        MemberDay shaded = day(shade, bar).members().get(0);
        assertEquals(open.hottestC(), mixed.hottestC());
        // two of the five points, at 2.6 and 3.8 m north, lie in the sun
        double expected = (2 * open.meanC().get(12) + 3 * shaded.meanC().get(12)) / 5;
        assertEquals(expected, mixed.meanC().get(12), 1e-9);
    }

    /** Its own far side lies in its own shade, so the light is asked for outside it, towards the sun and the sky. */
    @Test
    @Tag("derived")
    void asksForTheLightJustOffTheSideThatFacesIt() {
        LightReach asks = reach(
                (at, sunDirection) -> {
                    double east = at.xM() - 5;
                    double up = at.zM() - 4;
                    // half of 48.3 mm and one more
                    assertEquals(0.02515, Math.hypot(east, up), 1e-9);
                    assertTrue(east * sunDirection.xM() + up * sunDirection.zM() > 0, "towards the sun");
                    return 1;
                },
                at -> {
                    // above and below, where the bar hides the sky: together the whole
                    assertEquals(0.02515, Math.abs(at.zM() - 4), 1e-9);
                    return at.zM() > 4 ? 1 : 0;
                });
        assertEquals(
                24, day(asks, level(Material.TIMBER)).members().get(0).meanC().size());
        LightReach asksPole = reach(
                (at, sunDirection) -> {
                    assertEquals(0.02515, Math.hypot(at.xM() - 2, at.yM() - 2), 1e-9);
                    return 1;
                },
                at -> {
                    assertEquals(0.02515, Math.hypot(at.xM() - 2, at.yM() - 2), 1e-9);
                    return 1;
                });
        assertEquals(24, day(asksPole, upright()).members().get(0).meanC().size());
    }

    /** Members shade themselves in a real scene; that must not count as shade, whichever way they stand. */
    @Test
    @Tag("derived")
    void itsOwnShadeDoesNotCountInARealScene() {
        Support leaning = bar("leaning", Material.TIMBER, new Point(8, 2, 0), new Point(8, 6, 4));
        Support[] supports = {upright(), level(Material.TIMBER), leaning};
        Scene scene = Scene.yard(10, 10);
        for (Support support : supports) {
            scene.add(support);
        }
        ShadeScene shade = ShadeScene.of(scene.build(), ShadeSettings.standard());
        LightReach reach = reach(
                (at, sunDirection) -> shade.beam(at.xM(), at.yM(), at.zM(), sunDirection, 0),
                at -> shade.sky(at.xM(), at.yM(), at.zM(), 0));
        List<MemberDay> open = day(LightReach.OPEN, supports).members();
        List<MemberDay> real = day(reach, supports).members();
        for (int i = 0; i < supports.length; i++) {
            // the bars hide a few thousandths of each other's sky, and the sky is summed over a few hundred directions
            assertEquals(open.get(i).peakC(), real.get(i).peakC(), 0.3, supports[i].id());
            assertEquals(open.get(i).meanC().get(3), real.get(i).meanC().get(3), 0.3, supports[i].id());
        }
    }

    @Test
    void countsTheHoursInWhichItBurns() {
        MemberDay day =
                day(LightReach.OPEN, level(Material.GALVANISED_STEEL)).members().get(0);
        List<Integer> hours = day.hoursThatBurn(ContactLimits.Hold.MINUTE);
        List<Integer> expected = IntStream.range(0, 24)
                .filter(hour -> day.hottestC().get(hour) >= 51)
                .boxed()
                .toList();
        assertEquals(expected, hours);
        assertTrue(hours.contains(12) && !hours.contains(3), hours.toString());
        assertTrue(day.isSteady());
        assertTrue(day.peakC() >= day.meanC().get(day.hottestHour()));
    }

    @Test
    @Tag("derived")
    void theHottestHourOfAYearIsAnAfternoonOfTheHotMonth() {
        List<Double> max = List.of(2.0, 4.0, 9.0, 14.0, 18.0, 22.0, 26.0, 23.0, 19.0, 13.0, 7.0, 3.0);
        List<Double> min = List.of(-5.0, -4.0, -1.0, 3.0, 7.0, 11.0, 14.0, 12.0, 9.0, 5.0, 0.0, -4.0);
        Site middle = new Site(48, 11, ZoneOffset.ofHours(1));
        HotHour hour = HotHour.hottest(middle, new MonthlyWeather(max, min, 0, 3), SETTINGS, 2026);
        var clock = hour.moment().atZone(middle.zone());
        assertEquals(7, clock.getMonthValue());
        assertTrue(clock.getHour() >= 12 && clock.getHour() <= 14, clock.toString());
        List<HotHour.Row> rows = hour.compare(
                SETTINGS,
                List.of(SurfaceCatalogue.GALVANISED_OXIDISED, SurfaceCatalogue.WOOD),
                List.of(0.0483, 0.3),
                List.of(0.0, 1.0));
        assertEquals(8, rows.size());
        HotHour.Row metal = rows.get(0);
        assertEquals(0.0483, metal.diameterM());
        assertEquals(0, metal.windMPerS());
        assertEquals(
                new MemberBalance(0.0483, SurfaceCatalogue.GALVANISED_OXIDISED)
                        .surfaceC(Exposure.of(SETTINGS, hour.open(), 1, 1, 1, hour.sunAltitudeDeg())),
                metal.surfaceC(),
                1e-9);
        assertTrue(metal.burns(ContactLimits.Hold.MINUTE) && metal.isSteady());
        assertFalse(rows.get(7).isSteady(), "a log of 30 cm");
    }
}
