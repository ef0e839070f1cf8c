package limbway.model.volume;

import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Ground;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/**
 * Volumes in closed form, each within four of its own standard errors: a right program misses that about once in sixteen
 * thousand draws, and the draws are fixed.
 */
@Tag("derived")
class ColumnsTest {

    private static final double SIGMAS = 4;
    private static final double TOP_M = 20;
    private static final int COLUMNS = 60_000;

    private static Columns.Estimate within(double reachM, Shape... shapes) {
        return new Columns(over(-4, -4, 4, 4, TOP_M), Stops.NONE, reachM, COLUMNS, 1).measure(List.of(shapes));
    }

    private static Extent over(double x0M, double y0M, double x1M, double y1M, double topM) {
        return Extent.level(new Ground(Outline.rectangle(x0M, y0M, x1M, y1M), "", List.of()), topM);
    }

    private static Shape bar(double x0, double y0, double z0, double x1, double y1, double z1) {
        return new Bar(new Segment(new Point(x0, y0, z0), new Point(x1, y1, z1)), 0);
    }

    private static Shape ball(double x, double y, double z) {
        return bar(x, y, z, x, y, z);
    }

    private static void assertVolume(double expectedM3, Columns.Estimate found) {
        assertEquals(expectedM3, found.m3(), SIGMAS * found.standardErrorM3());
        // an error that says nothing would let everything pass: it must stay below half a percent
        assertTrue(found.standardErrorM3() < 0.005 * expectedM3, () -> found.toString());
    }

    @Test
    void aCapsuleHasTheSameVolumeLevelUprightAndSlanting() {
        // π r² L + 4/3 π r³ with r = 1, L = 5
        double capsuleM3 = 19.896753;
        assertVolume(capsuleM3, within(1, bar(-2.5, 0.3, 5, 2.5, 0.3, 5)));
        assertVolume(capsuleM3, within(1, bar(0.2, 0.3, 5, 0.2, 0.3, 10)));
        // 3-4-5: three across, four up
        assertVolume(capsuleM3, within(1, bar(0, 0, 5, 3, 0, 9)));
        assertVolume(capsuleM3, within(1, bar(1, 1, 9, -1, 3, 9 - Math.sqrt(17))));
    }

    @Test
    void aReachOneHundredthTooLongIsNoticed() {
        Columns.Estimate wrong = within(1.01, bar(-2.5, 0.3, 5, 2.5, 0.3, 5));
        assertTrue(Math.abs(wrong.m3() - 19.896753) > SIGMAS * wrong.standardErrorM3(), () -> wrong.toString());
    }

    @Test
    void theThicknessOfABarAddsToTheReach() {
        Shape thick = new Bar(new Segment(new Point(-2.5, 0, 5), new Point(2.5, 0, 5)), 0.25);
        assertEquals(
                within(1, bar(-2.5, 0, 5, 2.5, 0, 5)).m3(), within(0.75, thick).m3(), 1e-9);
    }

    @Test
    void whatTwoSpheresShareCountsOnce() {
        // unit spheres one apart share two caps of height 1/2: 2 π h² (3 − h) / 3 = 5π/12 = 1.308997
        Columns.Estimate union = within(1, ball(0, 0, 5), ball(1, 0, 5));
        assertVolume(7.068583, union);
        Columns.Estimate above = within(1, ball(0, 0, 5), ball(0, 0, 6));
        assertVolume(7.068583, above);
        double overlapM3 =
                within(1, ball(0, 0, 5)).m3() + within(1, ball(1, 0, 5)).m3() - union.m3();
        // the three errors are at worst added
        assertEquals(1.308997, overlapM3, 3 * SIGMAS * union.standardErrorM3());
    }

    @Test
    void crossedCylindersShareSixteenThirdsOfTheCubeOfTheRadius() {
        Shape one = bar(-3, 0, 5, 3, 0, 5);
        Shape other = bar(0, -3, 5, 0, 3, 5);
        Columns.Estimate union = within(1, one, other);
        double single = Math.PI * 6 + 4.0 / 3 * Math.PI;
        // round ends begin 3 m from the crossing and share nothing
        assertVolume(2 * single - 16.0 / 3, union);
    }

    @Test
    void aLevelRectangleHasTheVolumeOfItsParallelBody() {
        // Steiner: 2 r A + half the tube along the edge π r² P / 2 + the ball of the corners 4/3 π r³
        double expectedM3 = 2 * 12 + Math.PI * 14 / 2 + 4.0 / 3 * Math.PI;
        assertVolume(expectedM3, within(1, new Level(PlanArea.of(Outline.rectangle(-2, -1, 2, 2)), 5)));
    }

    @Test
    void aCrownHasTheVolumeOfItsParallelBody() {
        // cylinder R = 2, H = 3: π R² (H + 2r) + π r² (π R) + 2 π R r H + π r² H + 4/3 π r³, r = 1
        double expectedM3 =
                Math.PI * 4 * 5 + Math.PI * Math.PI * 2 + 2 * Math.PI * 2 * 3 + Math.PI * 3 + 4.0 / 3 * Math.PI;
        assertVolume(expectedM3, within(1, new Drum(new Crown("crown", "", new Point(1, 1, 0), 2, 5, 8))));
    }

    @Test
    void groundAndTopCutOff() {
        assertVolume(2.0 / 3 * Math.PI, within(1, ball(0, 0, 0)));
        assertVolume(2.0 / 3 * Math.PI, within(1, ball(0, 0, TOP_M)));
        // a corner of the outline keeps a quarter
        assertVolume(1.0 / 3 * Math.PI, within(1, ball(4, 4, 5)));
    }

    @Test
    void groundReachesOverTheEdgeOfAPond() {
        var ground = Scene.yard(10, 10).rock("pond", 3, 3, 7, 7).build().ground();
        Polygon outside = ground.outline().toPolygon();
        PlanArea open = new PlanArea(
                outside.difference(ground.obstacles().get(0).outline().toPolygon()));
        assertEquals(84, open.areaM2(), 1e-9);
        assertEquals(1, open.distanceM(4, 5), 1e-12);
        assertEquals(0, open.distanceM(1, 5), 0);
        Columns.Estimate found =
                new Columns(over(0, 0, 10, 10, TOP_M), Stops.NONE, 1, COLUMNS, 1).measure(List.of(new Level(open, 0)));
        // 84 m² one metre high; quarter tubes along the pond's 16 m, less the corners, where two of them share a
        // quarter
        // of what crossed cylinders share of one octant: each square corner of side 1 holds ∫∫ √(1 − min(x,y)²) instead
        double corner = cornerM3();
        assertVolume(84 + 4 * 2 * Math.PI / 4 + 4 * corner, found);
    }

    /** ∫∫ √(1 − min(x, y)²) over the unit square = 2 ∫ (1 − x) √(1 − x²) dx = 2 (π/4 − 1/3). */
    private static double cornerM3() {
        return 2 * (Math.PI / 4 - 1.0 / 3);
    }

    /** Plain Monte Carlo in three dimensions by distances alone shares no step with the columns. */
    @Test
    void plainMonteCarloAgrees() {
        Segment slanting = new Segment(new Point(-0.4, -0.3, 0.6), new Point(0.5, 0.4, 1.4));
        double boxM3 = 8;
        int n = 1_000_000;
        SplittableRandom chance = new SplittableRandom(7);
        int inBall = 0;
        int inCapsule = 0;
        for (int i = 0; i < n; i++) {
            Point p = new Point(chance.nextDouble(-1, 1), chance.nextDouble(-1, 1), chance.nextDouble(0, 2));
            inBall += p.distanceM(new Point(0, 0, 1)) <= 1 ? 1 : 0;
            inCapsule += slanting.distanceM(p) <= 0.6 ? 1 : 0;
        }
        double ballErrorM3 = plainErrorM3(boxM3, inBall, n);
        // V √(p (1 − p) / n) with p = π / 6 and n = 10⁶: 8 × √(0.5236 × 0.4764 / 10⁶) = 0.003995
        assertEquals(0.003995, ballErrorM3, 5e-6);
        assertEquals(4.0 / 3 * Math.PI, boxM3 * inBall / n, SIGMAS * ballErrorM3);
        Columns columns = new Columns(over(-1, -1, 1, 1, 2), Stops.NONE, 0.6, COLUMNS, 1);
        Columns.Estimate found = columns.measure(List.of(new Bar(slanting, 0)));
        double bothM3 = Math.hypot(plainErrorM3(boxM3, inCapsule, n), found.standardErrorM3());
        assertEquals(boxM3 * inCapsule / n, found.m3(), SIGMAS * bothM3);
        // at a sixteenth of the samples the columns are at least three times as exact
        assertTrue(found.standardErrorM3() * 3 < plainErrorM3(boxM3, inCapsule, n), () -> found.toString());
    }

    private static double plainErrorM3(double boxM3, int hits, int n) {
        double p = (double) hits / n;
        return boxM3 * Math.sqrt(p * (1 - p) / n);
    }

    /** The stated error against what really happens, over independent draws. */
    @Test
    void theStatedErrorIsHonest() {
        Extent extent = over(-4, -4, 4, 4, TOP_M);
        int tried = 400;
        int beyondOne = 0;
        for (int seed = 1; seed <= tried; seed++) {
            Columns.Estimate found =
                    new Columns(extent, Stops.NONE, 1, 2000, seed).measure(List.of(bar(0, 0, 5, 3, 0, 9)));
            double missed = Math.abs(found.m3() - 19.896753) / found.standardErrorM3();
            assertTrue(missed < SIGMAS, "seed " + seed + ": " + missed + " standard errors");
            beyondOne += missed > 1 ? 1 : 0;
        }
        // normal errors lie beyond one in 0.317 of all draws; 400 draws know that to 0.023, three times of which is
        // 0.07
        assertEquals(0.317, (double) beyondOne / tried, 0.07);
    }
}
