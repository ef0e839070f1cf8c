package limbway.model.shade;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Bounds;
import limbway.model.enclosure.Cover;
import limbway.model.enclosure.CoverKind;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Shading;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What holds for every enclosure. */
class ShadeLawsTest {

    private static final ShadeSettings SETTINGS = ShadeSettings.standard();

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void theTreeOfBoxesMissesNothing(long seed) {
        ShadeScene scene = ShadeScene.of(RandomShade.everything(seed), SETTINGS);
        SplittableRandom chance = new SplittableRandom(seed);
        int half = 0;
        for (int i = 0; i < 2000; i++) {
            Point p = new Point(chance.nextDouble(30), chance.nextDouble(30), chance.nextDouble(0, 7));
            Point sun = Shadows.sun(chance.nextDouble(1, 90), chance.nextDouble(360));
            double all = 1;
            for (Caster caster : scene.casters()) {
                all *= caster.through(p.xM(), p.yM(), p.zM(), sun.xM(), sun.yM(), sun.zM(), 0);
            }
            // the same factors in another order: a rounding for each
            assertEquals(all, scene.beam(p.xM(), p.yM(), p.zM(), sun, 0), 1e-14, () -> "seed, point " + p);
            half += all > 0 && all < 1 ? 1 : 0;
        }
        assertTrue(half > 100, "partial light must have been met");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theAuditIsThatOfBruteForceForAnyNumberOfThreads(long seed) {
        Enclosure enclosure = RandomShade.everything(seed);
        ShadeCalendar calendar = new ShadeCalendar(2026, 60, ZoneOffset.ofHours(8));
        ShadeYear one = audit(enclosure, calendar, 1);
        ShadeYear two = audit(enclosure, calendar, 2);
        BruteShade brute = new BruteShade(enclosure, ShadeRule.standard(), calendar, false);
        for (int day = 0; day < calendar.days(); day++) {
            for (int slot = 0; slot < calendar.slots(); slot++) {
                assertEquals(one.isSunUp(day, slot), two.isSunUp(day, slot));
                boolean isSample = day % 10 == 0 && one.isSunUp(day, slot);
                boolean[] expected = isSample ? brute.shaded(day, slot) : new boolean[0];
                for (int p = 0; p < one.platforms().size(); p++) {
                    assertEquals(one.isShaded(p, day, slot), two.isShaded(p, day, slot));
                    if (isSample) {
                        assertEquals(expected[p], one.isShaded(p, day, slot));
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void anotherCasterOrADenserOneNeverBringsLight(long seed) {
        Enclosure enclosure = RandomShade.everything(seed);
        Shading shading = enclosure.shading();
        List<Cover> more = new ArrayList<>(shading.covers());
        Facet over = new Facet(List.of(new Point(5, 5, 8), new Point(20, 6, 8), new Point(12, 22, 9)));
        more.add(new Cover("more", CoverKind.SAIL, over, 0.4));
        List<Cover> denser = shading.covers().stream()
                .map(cover -> new Cover(cover.id(), cover.kind(), cover.facet(), cover.transmittance() / 2))
                .toList();
        ShadeScene before = ShadeScene.of(enclosure, SETTINGS);
        ShadeScene added = ShadeScene.of(with(enclosure, more), SETTINGS);
        ShadeScene thick = ShadeScene.of(with(enclosure, denser), SETTINGS);
        SplittableRandom chance = new SplittableRandom(seed);
        int changed = 0;
        for (int i = 0; i < 2000; i++) {
            double x = chance.nextDouble(30);
            double y = chance.nextDouble(30);
            double z = chance.nextDouble(7);
            Point sun = Shadows.sun(chance.nextDouble(5, 90), chance.nextDouble(360));
            double light = before.beam(x, y, z, sun, 0);
            // products in another order differ by roundings
            assertTrue(added.beam(x, y, z, sun, 0) <= light + 1e-14);
            assertTrue(thick.beam(x, y, z, sun, 0) <= light + 1e-14);
            changed += added.beam(x, y, z, sun, 0) < light - 1e-6 ? 1 : 0;
        }
        assertTrue(changed > 50, "the added sail must have been met");
    }

    @Test
    void aFarWallBelowTheSunShadesNothingAndWaterNever() {
        Enclosure yard = Scene.yard(40, 40).deck("rest", 30, 18, 34, 22, 1).build();
        Barrier wall = new Barrier("wall", BarrierKind.WALL, Outline.rectangle(0, 0, 1, 40), 0, 4);
        Barrier pool = new Barrier("pool", BarrierKind.WATER, Outline.rectangle(2, 0, 38, 40), 0, 6);
        ShadeScene scene =
                ShadeScene.of(yard.withBounds(new Bounds(List.of(wall, pool), List.of(), List.of())), SETTINGS);
        // from (32, 20, 1) the crest, 31 m away and 3 m higher, stands at atan(3/31) = 5.53 degrees
        assertEquals(1, scene.beam(32, 20, 1, Shadows.sun(5.6, 270), 0));
        assertEquals(0, scene.beam(32, 20, 1, Shadows.sun(5.4, 270), 0));
        assertEquals(1, scene.beam(32, 20, 1, Shadows.sun(5.4, 90), 0));
    }

    @Test
    void aPaneIsCountedOnceAndALeafOfGlassAsManyTimesAsItIsCrossed() {
        Enclosure yard = Scene.yard(40, 40).build();
        Barrier near = new Barrier("near", BarrierKind.GLASS, Outline.rectangle(10, 0, 10.02, 40), 0, 5);
        Barrier far = new Barrier("far", BarrierKind.GLASS, Outline.rectangle(20, 0, 20.02, 40), 0, 5);
        ShadeScene scene =
                ShadeScene.of(yard.withBounds(new Bounds(List.of(near, far), List.of(), List.of())), SETTINGS);
        Point low = Shadows.sun(6, 270);
        // the square of a square root: one rounding
        assertEquals(0.8, scene.beam(15, 20, 1, low, 0), 1e-14);
        assertEquals(0.64, scene.beam(25, 20, 1, low, 0), 1e-14);
        assertEquals(1, scene.beam(5, 20, 1, low, 0), 1e-14);
    }

    @Test
    void aDeckShadesWhatLiesBelowItAndNotItself() {
        ShadeScene scene =
                ShadeScene.of(Scene.yard(40, 40).deck("rest", 10, 10, 14, 14, 3).build(), SETTINGS);
        Point sun = Shadows.sun(80, 0);
        assertEquals(1, scene.beam(12, 12, 3, sun, 0));
        assertEquals(1, scene.beam(12, 12, 3.001, sun, 0));
        assertEquals(0, scene.beam(12, 12, 2.9, sun, 0));
    }

    @Test
    void lightBetweenStrandsIsWhatTheyLeaveOpen() {
        Point up = new Point(0, 0, 1);
        List<Point> square =
                List.of(new Point(-50, -50, 2), new Point(50, -50, 2), new Point(50, 50, 2), new Point(-50, 50, 2));
        Sheet mesh = Sheet.mesh(square, up, 0.1);
        assertEquals(0.81, Shadows.light(mesh, 0, 0, up), 1e-12);
        // tilted along one set of strands: that set keeps its share, the other lies closer by cos 60°
        assertEquals(0.9 * 0.8, Shadows.light(mesh, 0, 0, Shadows.sun(30, 90)), 1e-12);
        assertEquals(0.9 * 0.8, Shadows.light(mesh, 0, 0, Shadows.sun(30, 0)), 1e-12);
        // so low that each strand hides the next
        assertEquals(0, Shadows.light(mesh, 0, 0, Shadows.sun(5, 0)), 1e-12);
    }

    @Test
    void aMastHidesTheSunAlongItsAxisAndNothingWhenTheSunIsBehind() {
        Member mast = new Member(new Point(0, 0, 1), new Point(0, 0, 9), 0.1, 0.1, false, false, 40);
        Point up = new Point(0, 0, 1);
        // 0.1 m at 1 m is far wider than the sun, 0.0047 m
        assertEquals(0, Shadows.light(mast, 0, 0, up));
        assertEquals(0, Shadows.light(mast, 0.09, 0, up));
        assertEquals(1, Shadows.light(mast, 0.11, 0, up));
        assertEquals(1, mast.through(0, 0, 9.5, 0, 0, 1, 0));
        // beside it, and with the sun on this side
        assertEquals(1, mast.through(0.2, 0, 4, 1, 0, 0, 0));
        assertEquals(0, mast.through(0.2, 0, 4, -1, 0, 0, 0));
        // its own axis lies in the light
        assertEquals(1, mast.through(0, 0, 4, 0.6, 0, 0.8, 0));
    }

    @Test
    void anOpenPlaceHasTheWholeSkyAndALidHalfOrNoneOfIt() {
        Enclosure open = Scene.yard(40, 40).build();
        // weights are exact: 192 times 1
        assertEquals(1, ShadeScene.of(open, SETTINGS).sky(20, 20, 1, 0));
        Facet lid = new Facet(List.of(
                new Point(-500, -500, 3), new Point(540, -500, 3), new Point(540, 540, 3), new Point(-500, 540, 3)));
        assertEquals(
                0,
                ShadeScene.of(with(open, List.of(new Cover("lid", CoverKind.ROOF, lid, 0))), SETTINGS)
                        .sky(20, 20, 1, 0));
        Barrier wall = new Barrier("wall", BarrierKind.WALL, Outline.rectangle(-2000, 20, 2000, 21), 0, 5000);
        ShadeScene halved = ShadeScene.of(open.withBounds(new Bounds(List.of(wall), List.of(), List.of())), SETTINGS);
        // a wall through the place hides half the sky; directions lie as often on one side as on the other
        assertEquals(0.5, halved.sky(20, 19.99, 1, 0), 0.03);
    }

    @Test
    void anUnknownPlatformOrNoThreadIsRefused() {
        Enclosure yard = Scene.yard(10, 10).deck("rest", 2, 2, 4, 4, 1).build();
        ShadeCalendar calendar = new ShadeCalendar(2026, 60, ZoneOffset.ofHours(8));
        assertEquals(
                "shade audit: no platform \"nest\"",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> ShadeAudit.of(
                                        yard,
                                        SETTINGS,
                                        ShadeRule.standard(),
                                        calendar,
                                        List.of("nest"),
                                        1,
                                        ShadeProgress.NONE))
                        .getMessage());
        assertEquals(
                "shade audit: threads = 0, allowed 1 or more",
                assertThrows(IllegalArgumentException.class, () -> audit(yard, calendar, 0))
                        .getMessage());
        assertTrue(ShadeAudit.of(
                        yard, SETTINGS, ShadeRule.standard(), calendar, List.of("rest"), 1, (done, total) -> done < 3)
                .isEmpty());
    }

    private static ShadeYear audit(Enclosure enclosure, ShadeCalendar calendar, int threads) {
        List<String> names = enclosure.platforms().stream().map(Platform::id).toList();
        return ShadeAudit.of(enclosure, SETTINGS, ShadeRule.standard(), calendar, names, threads, ShadeProgress.NONE)
                .orElseThrow();
    }

    private static Enclosure with(Enclosure enclosure, List<Cover> covers) {
        Shading shading = enclosure.shading();
        return enclosure.withShading(new Shading(covers, shading.buildings(), shading.neighbours()));
    }

    /** Drawn in eight pieces, a straight rope must hide what it hides in one: from 10 m a piece of 0.5 m is seen as 2.9 degrees. */
    @Test
    void aRopeInManyPiecesHidesNoMoreThanInOne() {
        Member whole = new Member(new Point(-2, 0, 10), new Point(2, 0, 10), 0.0125, 0.0125, false, false, 40);
        Point up = new Point(0, 0, 1);
        for (double x = -2.1; x < 2.1; x += 0.037) {
            double light = 1;
            for (int i = 0; i < 8; i++) {
                Member piece = new Member(
                        new Point(-2 + i * 0.5, 0, 10),
                        new Point(-1.5 + i * 0.5, 0, 10),
                        0.0125,
                        0.0125,
                        i > 0,
                        i < 7,
                        40);
                light *= Shadows.light(piece, x, 0.01, up);
            }
            // rounding of the place along the axis
            assertEquals(Shadows.light(whole, x, 0.01, up), light, 1e-12);
        }
    }

    @Test
    void sharesOutsideTheirRangeAreRefusedByName() {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> new ShadeSettings(0.8, 1.3, 0.5, 0.4));
        assertEquals("shade settings: hammock = 1.3, allowed 0 to below 1", refused.getMessage());
    }
}
