package limbway.model.volume;

import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Ground;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/**
 * Sheets, and what walls, mesh and wire take from reach, in closed form, each within four of its own standard errors: a
 * right program misses that about once in sixteen thousand draws, and the draws are fixed.
 */
@Tag("derived")
class StopsTest {

    private static final double SIGMAS = 4;
    private static final double TOP_M = 20;
    private static final int COLUMNS = 60_000;
    private static final double BALL_M3 = 4.0 / 3 * Math.PI;

    private static Columns.Estimate within(Stops stops, Shape... shapes) {
        Ground ground = new Ground(Outline.rectangle(-4, -4, 4, 4), "", List.of());
        return new Columns(Extent.level(ground, TOP_M), stops, 1, COLUMNS, 1).measure(List.of(shapes));
    }

    private static void assertVolume(double expectedM3, Columns.Estimate found) {
        assertEquals(expectedM3, found.m3(), SIGMAS * found.standardErrorM3());
        // an error that says nothing would let everything pass: it must stay below half a percent
        assertTrue(found.standardErrorM3() < 0.005 * expectedM3, () -> found.toString());
    }

    private static Facet rectangle(Point corner, Point along, Point up) {
        return new Facet(List.of(corner, corner.plus(along), corner.plus(along).plus(up), corner.plus(up)));
    }

    private static Shape both(Facet facet) {
        return new Sheet(facet, Sheet.Side.BOTH);
    }

    private static Bar ball(double x, double y, double z) {
        return new Bar(new Segment(new Point(x, y, z), new Point(x, y, z)), 0);
    }

    @Test
    void aRectangleHasTheVolumeOfItsParallelBodyHoweverItStands() {
        // Steiner, r = 1: 2 A + π P / 2 + 4/3 π for 3 by 2 m
        double expectedM3 = 2 * 6 + Math.PI * 10 / 2 + BALL_M3;
        Point along = new Point(3, 0, 0);
        assertVolume(expectedM3, within(Stops.NONE, both(rectangle(new Point(-1.5, 0, 5), along, new Point(0, 0, 2)))));
        assertVolume(
                expectedM3, within(Stops.NONE, both(rectangle(new Point(-1.5, -1, 5), along, new Point(0, 2, 0)))));
        // two metres up a slope of 3-4-5, and turned
        Point slanting = new Point(0, 1.6, 1.2);
        assertVolume(expectedM3, within(Stops.NONE, both(rectangle(new Point(-1.5, -1, 5), along, slanting))));
        Point turned = new Point(1.8, 2.4, 0);
        Point steep = new Point(-0.96, 0.72, 1.6);
        assertEquals(0, turned.dot(steep), 1e-12);
        assertVolume(expectedM3, within(Stops.NONE, both(rectangle(new Point(-1, -1, 5), turned, steep))));
    }

    @Test
    void aMeshWallThatStandsOnTheGroundLosesWhatWouldLieBelow() {
        // r = 1, L = 4, H = 3: slab 2 L H, half tubes up two sides π H, half a tube on top π L / 2, two quarter balls
        double expectedM3 = 2 * 12 + Math.PI * 3 + Math.PI * 4 / 2 + BALL_M3 / 2;
        assertVolume(
                expectedM3,
                within(Stops.NONE, both(rectangle(new Point(-2, 0, 0), new Point(4, 0, 0), new Point(0, 0, 3)))));
    }

    @Test
    void eachSideOfAPanelHasHalfOfTheWhole() {
        for (Point up : List.of(new Point(0, 0, 2), new Point(0, 2, 0), new Point(0, 1.6, 1.2))) {
            Facet facet = rectangle(new Point(-1.5, -1, 5), new Point(3, 0, 0), up);
            double halfM3 = 6 + Math.PI * 10 / 4 + BALL_M3 / 2;
            Shape front = new Sheet(facet, Sheet.Side.FRONT);
            Shape back = new Sheet(facet, Sheet.Side.BACK);
            assertVolume(halfM3, within(Stops.NONE, front));
            assertVolume(halfM3, within(Stops.NONE, back));
            // the same columns, each cut in two at the plane
            assertEquals(
                    within(Stops.NONE, both(facet)).m3(),
                    within(Stops.NONE, front, back).m3(),
                    1e-9);
        }
    }

    /** An L of three squares of 2 m. */
    @Test
    void aPanelNeedNotBeConvex() {
        Facet bent = new Facet(List.of(
                new Point(-2, 0, 5),
                new Point(2, 0, 5),
                new Point(2, 0, 7),
                new Point(0, 0, 7),
                new Point(0, 0, 9),
                new Point(-2, 0, 9)));
        // 2 A; half tubes along the edges but for the last metre before the inner corner; a quarter ball at each outer
        // corner; in the inner corner twice ∫∫ √(1 − min(x, y)²) over a unit square, as in ColumnsTest
        double outer = 2 * 12 + Math.PI * (16 - 2) / 2 + 5 * BALL_M3 / 4;
        double inner = 4 * (Math.PI / 4 - 1.0 / 3);
        assertVolume(outer + inner, within(Stops.NONE, both(bent)));
    }

    @Test
    void aLiveWireTakesACylinderOutOfACapsule() {
        // capsule of 5 m and r = 1; along its axis a cylinder of 0.3 m, with the parts of it in the two round ends
        double c = 0.3;
        double inEndsM3 = BALL_M3 * (1 - Math.pow(1 - c * c, 1.5));
        double expectedM3 = Math.PI * 5 + BALL_M3 - Math.PI * c * c * 5 - inEndsM3;
        Bar rope = new Bar(new Segment(new Point(-2.5, 0, 5), new Point(2.5, 0, 5)), 0);
        Bar wire = new Bar(new Segment(new Point(-4, 0, 5), new Point(4, 0, 5)), c);
        assertVolume(expectedM3, within(new Stops(List.of(wire), List.of()), rope));
        Bar upright = new Bar(new Segment(new Point(0.3, 0.2, 5), new Point(0.3, 0.2, 10)), 0);
        Bar wireUp = new Bar(new Segment(new Point(0.3, 0.2, 2), new Point(0.3, 0.2, 13)), c);
        assertVolume(expectedM3, within(new Stops(List.of(wireUp), List.of()), upright));
    }

    @Test
    void plantingIsKeptFreeWithItsClearance() {
        // a ball of 1 m, its middle in planting of 0.4 m height and 0.1 m of clearance: slices of half a ball are left
        Block planting = new Block(PlanArea.of(Outline.rectangle(-3, -3, 3, 3)), 4.8, 5.2, 0.1);
        double capM3 = Math.PI * 0.7 * 0.7 * (3 - 0.7) / 3;
        assertVolume(2 * capM3, within(new Stops(List.of(planting), List.of()), ball(0, 0, 5)));
    }

    /** Volume of the cap of a unit ball beyond a plane. */
    private static double capM3(double fromMiddleM) {
        double h = 1 - fromMiddleM;
        return Math.PI * h * h * (3 - h) / 3;
    }

    @Test
    void aWallTakesItsOwnPrismAndWhatIsBehindIt() {
        Barrier wall = new Barrier("wall", BarrierKind.WALL, Outline.rectangle(0, -3, 0.2, 3), 0, 9);
        Block prism = new Block(PlanArea.of(wall.footprint()), 0, 9, 0);
        // water hides nothing: beyond it counts
        assertVolume(BALL_M3 - capM3(0.5) + capM3(0.7), within(new Stops(List.of(prism), List.of()), ball(-0.5, 0, 5)));
        Stops solid = new Stops(List.of(prism), List.of(new WallScreen(wall)));
        assertVolume(BALL_M3 - capM3(0.5), within(solid, ball(-0.5, 0, 5)));
        // a deck whose edge lies in the face of the wall reaches along it: nothing is hidden in front
        assertVolume(BALL_M3 / 2, within(solid, ball(0, 0, 5)));
    }

    @Test
    void aHandReachesOverTheTopButNotThroughTheMesh() {
        Facet low = rectangle(new Point(0, -3, 0), new Point(0, 6, 0), new Point(0, 0, 5));
        MeshScreen mesh = new MeshScreen(new Sheet(low, Sheet.Side.BOTH), true, true);
        Stops stops = new Stops(List.of(), List.of(mesh));
        // level with its top: of what lies beyond, the lower half is hidden
        assertVolume(BALL_M3 - capM3(0.5) / 2, within(stops, ball(-0.5, 0, 5)));
        assertVolume(BALL_M3 - capM3(0.5), within(stops, ball(-0.5, 0, 2)));
        assertVolume(BALL_M3, within(stops, ball(-0.5, 0, 6.1)));
    }

    @Test
    void aTubeInThePlaneOfAPanelIsUsedFromTheSidesThatThePanelIs() {
        Facet facet = rectangle(new Point(0, -3, 1), new Point(0, 6, 0), new Point(0, 0, 8));
        Sheet sheet = new Sheet(facet, Sheet.Side.BOTH);
        for (boolean front : List.of(true, false)) {
            Stops oneSided = new Stops(List.of(), List.of(new MeshScreen(sheet, front, !front)));
            assertVolume(BALL_M3 / 2, within(oneSided, ball(0, 0, 5)));
        }
        Stops both = new Stops(List.of(), List.of(new MeshScreen(sheet, true, true)));
        assertVolume(BALL_M3, within(both, ball(0, 0, 5)));
    }
}
