package limbway.model.structure;

import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.ResourceKind;
import limbway.model.geometry.Point;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Small frames whose ways can be counted by eye; masts stand farther apart than any body reaches. */
@Tag("derived")
class StructureTest {

    private static final Body FEMALE = Frames.body("adult female");

    private static Scene masts(int count) {
        Scene scene = Scene.yard(60, 20);
        for (int i = 0; i < count; i++) {
            scene.pole("mast-" + i, mastX(i), mastY(i), 7);
        }
        return scene;
    }

    /** Two rows, 8 m apart. */
    private static double mastX(int i) {
        return 4 + 8 * (i / 2);
    }

    private static double mastY(int i) {
        return 4 + 8 * (i % 2);
    }

    private static Point on(int mast, double zM) {
        return new Point(mastX(mast), mastY(mast), zM);
    }

    private static Scene join(Scene scene, int one, int other) {
        return scene.rope("rope-" + one + other, on(one, 6), on(other, 6));
    }

    private static Scene at(Scene scene, String id, ResourceKind kind, int mast) {
        return scene.resource(id, kind, on(mast, 6.5), "mast-" + mast);
    }

    private static Enclosure chain() {
        Scene scene = masts(6);
        join(scene, 0, 2);
        join(scene, 2, 4);
        at(scene, "nest", ResourceKind.NEST, 0);
        at(scene, "tray", ResourceKind.FOOD, 2);
        return at(scene, "pool", ResourceKind.WATER, 4).build();
    }

    private static Enclosure ring() {
        Scene scene = masts(4);
        join(scene, 0, 2);
        join(scene, 2, 3);
        join(scene, 3, 1);
        join(scene, 1, 0);
        at(scene, "nest", ResourceKind.NEST, 0);
        return at(scene, "tray", ResourceKind.FOOD, 3).build();
    }

    @Test
    void aChainHasOneWayAndIsPartedByItsMiddle() {
        PartGraph parts = Frames.of(chain(), FEMALE);
        DisjointWays ways = new DisjointWays(parts);
        assertEquals(1, ways.between(0, 2));
        assertEquals(1, ways.toOthers(0));
        List<Blocking> all = Blocking.all(parts);
        // on mast-2 sits the tray itself: nest and pool are parted; a rope parts its end from the rest
        assertEquals(
                List.of("mast-2: [0] [2]", "rope-02: [1, 2] [0]", "rope-24: [0, 1] [2]"),
                all.stream().map(blocking -> shown(parts, blocking)).sorted().toList());
        assertEquals(List.of(2), all.get(0).cutOff());
    }

    private static String shown(PartGraph parts, Blocking blocking) {
        StringBuilder text =
                new StringBuilder(parts.parts().get(blocking.part()).name()).append(":");
        blocking.sides().forEach(side -> text.append(' ').append(side));
        return text.toString();
    }

    @Test
    void aRingHasTwoWaysAndIsPartedNowhere() {
        PartGraph parts = Frames.of(ring(), FEMALE);
        assertEquals(2, new DisjointWays(parts).between(0, 1));
        assertEquals(2, new DisjointWays(parts).between(1, 0));
        assertEquals(2, new DisjointWays(parts).apart(0, 1));
        assertEquals(2, new DisjointWays(parts).toOthers(1));
        assertEquals(List.of(), Blocking.all(parts));
        assertEquals(List.of(), Joints.of(parts.graph()).cutPoints());
    }

    @Test
    void twoWaysThatMeetOnOneMastShareAPartButNoJoin() {
        Scene scene = masts(6);
        for (int one : new int[] {0, 2}) {
            scene.rope("high-" + one, on(one, 6.5), on(one + 2, 6.5)).rope("low-" + one, on(one, 2), on(one + 2, 2));
        }
        at(scene, "nest", ResourceKind.NEST, 0);
        at(scene, "pool", ResourceKind.WATER, 4);
        PartGraph parts = Frames.of(scene.build(), FEMALE);
        assertEquals(2, new DisjointWays(parts).between(0, 1));
        // the ropes of each height run on in one line and could be passed along, were it not for the mast between them
        assertEquals(1, new DisjointWays(parts).apart(0, 1));
        assertEquals(
                List.of("mast-2: [0] [1]"),
                Blocking.all(parts).stream()
                        .map(blocking -> shown(parts, blocking))
                        .toList());
    }

    @Test
    void mastsWithoutRopesHaveNoWayOffTheGround() {
        Scene scene = masts(2);
        at(scene, "nest", ResourceKind.NEST, 0);
        at(scene, "tray", ResourceKind.FOOD, 1);
        PartGraph parts = Frames.of(scene.food("hatch", 30, 10, 0).build(), FEMALE);
        DisjointWays ways = new DisjointWays(parts);
        assertEquals(0, ways.between(0, 1));
        assertEquals(0, ways.toOthers(0));
        assertEquals(List.of(), parts.partsOf(2));
        assertEquals(0, ways.toOthers(2));
        assertTrue(parts.parts().stream().allMatch(Part::touchesGround));
    }

    @Test
    void placesOnTheSamePartNeedNoWay() {
        Scene scene = masts(2);
        at(scene, "nest", ResourceKind.NEST, 0);
        at(scene, "tray", ResourceKind.FOOD, 0);
        PartGraph parts = Frames.of(scene.build(), FEMALE);
        assertEquals(Integer.MAX_VALUE, new DisjointWays(parts).between(0, 1));
        assertEquals(0, new DisjointWays(parts).toOthers(0));
    }

    @Test
    void aMastTooThickToHoldFallsIntoTheEndsOfItsRopes() {
        // 0.8 m thick, so its axis is farther from every other hold than it looks: two ropes end 4 m apart on it
        Scene scene = Scene.yard(40, 20)
                .beam("pillar", 0.8, new Point(20, 10, 0), new Point(20, 10, 8))
                .rope("low", new Point(10, 10, 3), new Point(20, 10, 3))
                .rope("high", new Point(30, 10, 7.5), new Point(20, 10, 7.5));
        PartGraph parts = Frames.of(scene.build(), FEMALE);
        int low = parts.partsNamed("low").get(0);
        int high = parts.partsNamed("high").get(0);
        assertTrue(
                Joints.pieces(parts.graph()).stream().noneMatch(piece -> piece.contains(low) && piece.contains(high)));
        assertFalse(parts.parts().get(high).touchesGround());
    }

    @Test
    void aDeckHasAsManyExitsAsOthersMustBarToShutIn() {
        Scene oneRope = masts(2).deck("deck", 19, 3, 21, 5, 6).rope("in", on(0, 6), new Point(19, 4, 6));
        assertExits(1, oneRope.build());
        Scene twoRopes = masts(2).deck("deck", 19, 3, 21, 5, 6)
                .rope("in", on(0, 6), new Point(19, 4, 6))
                .rope("out", on(1, 6), new Point(20, 5, 6));
        assertExits(2, twoRopes.build());
        // both lead to the same mast and nowhere else: whoever sits there shuts both
        Scene sameMast = masts(2).deck("deck", 19, 3, 21, 5, 6)
                .rope("in", on(0, 6), new Point(19, 3, 6))
                .rope("out", on(0, 2), new Point(19, 5, 6));
        assertExits(1, sameMast.build());
        assertExits(0, masts(2).deck("deck", 19, 3, 21, 5, 6).build());
    }

    private static void assertExits(int expected, Enclosure enclosure) {
        PartGraph parts = Frames.of(enclosure, FEMALE);
        List<Integer> decks = parts.partsNamed("deck");
        List<Integer> goals = IntStream.range(0, parts.parts().size())
                .filter(part -> parts.parts().get(part).touchesGround())
                .boxed()
                .toList();
        assertEquals(expected, new DisjointWays(parts).exits(decks.get(0), goals));
    }
}
