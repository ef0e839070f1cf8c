package limbway.model.shade;

import java.time.MonthDay;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Bounds;
import limbway.model.enclosure.Enclosure;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;

class SightLineTest {

    private static final Point WEST = new Point(5, 10, 1);
    private static final Point EAST = new Point(25, 10, 1);

    private static ShadeScene scene(Enclosure enclosure) {
        return ShadeScene.of(enclosure, ShadeSettings.standard());
    }

    private static double between(Enclosure enclosure, Point from, Point to) {
        ShadeScene scene = scene(enclosure);
        return scene.between(from, to, scene.season(MonthDay.of(6, 21)));
    }

    private static Enclosure withBarrier(BarrierKind kind, double topZM) {
        Barrier barrier = new Barrier("screen", kind, Outline.rectangle(14, 5, 15, 15), 0, topZM);
        return Scene.yard(30, 20).build().withBounds(new Bounds(List.of(barrier), List.of(), List.of()));
    }

    @Test
    @Tag("derived")
    void aWallHidesWhatIsBehindItAndNothingThatIsBeforeItOrHigher() {
        Enclosure walled = withBarrier(BarrierKind.WALL, 2);
        assertEquals(0, between(walled, WEST, EAST));
        assertEquals(0, between(walled, EAST, WEST));
        assertEquals(1, between(walled, WEST, new Point(13, 10, 1)), "the line ends before the wall");
        assertEquals(1, between(walled, new Point(5, 10, 3), new Point(25, 10, 3)), "the line passes over the wall");
        assertEquals(1, between(walled, WEST, WEST));
    }

    @Test
    @Tag("derived")
    void aPaneLetsThroughItsShareAndWaterEverything() {
        assertEquals(0.8, between(withBarrier(BarrierKind.GLASS, 2), WEST, EAST), 1e-12);
        assertEquals(1, between(withBarrier(BarrierKind.WATER, 2), WEST, EAST));
    }

    @Test
    @Tag("derived")
    void aDeckHidesWhatIsOnItFromBelowButNotWhatEndsOnItFromAbove() {
        Enclosure decked = Scene.yard(30, 20).deck("deck", 10, 5, 20, 15, 3).build();
        Point below = new Point(15, 10, 1);
        Point on = new Point(15, 10, 3);
        Point above = new Point(15.2, 10.3, 3.5);
        assertEquals(0, between(decked, below, above));
        assertEquals(1, between(decked, above, on));
        assertEquals(1, between(decked, on, above));
    }

    /** A ball of leaves of area index 3 over its depth of 2 m takes exp(-0.5 · 3 / 2 · L) on a way of L metres through it. */
    @Test
    @Tag("derived")
    void leavesThinTheLightByTheWayThroughThem() {
        Enclosure treed = Scene.yard(30, 20).crown("crown", 15, 10, 1, 0, 2).build();
        double index = treed.crowns().get(0).foliage().leafAreaIndex();
        double perM = 0.5 * index / 2;
        assertEquals(Math.exp(-2 * perM), between(treed, WEST, EAST), 1e-9);
        assertEquals(Math.exp(-perM), between(treed, WEST, new Point(15, 10, 1)), 1e-9, "ends in the middle");
        assertEquals(Math.exp(-0.5 * perM), between(treed, new Point(14.75, 10, 1), new Point(15.25, 10, 1)), 1e-9);
    }

    @Test
    @Tag("derived")
    void aPoleHidesNothing() {
        Enclosure poled = Scene.yard(30, 20).pole("pole", 15, 10, 4).build();
        assertEquals(1, between(poled, WEST, EAST));
    }

    /** The tree of boxes finds all that stands on a line: the same as asking every caster. */
    @Test
    @Tag("derived")
    void theTreeOfBoxesMissesNothingOnALine() {
        for (int seed = 0; seed < 20; seed++) {
            ShadeScene scene = scene(RandomShade.everything(seed));
            Random random = new Random(seed);
            for (int line = 0; line < 200; line++) {
                Point from = new Point(random.nextDouble() * 30, random.nextDouble() * 20, random.nextDouble() * 6);
                Point to = new Point(random.nextDouble() * 30, random.nextDouble() * 20, random.nextDouble() * 6);
                double lengthM = to.minus(from).lengthM();
                Point d = to.minus(from).times(1 / lengthM);
                double all = 1;
                for (Caster caster : scene.casters()) {
                    all *= caster.before(from.xM(), from.yM(), from.zM(), d.xM(), d.yM(), d.zM(), lengthM, 0);
                }
                assertEquals(all, scene.between(from, to, 0), 1e-12, "seed " + seed + ", line " + line);
                assertEquals(
                        all, scene.between(to, from, 0), 1e-9, "seed " + seed + ", line " + line + " turned round");
            }
        }
    }
}
