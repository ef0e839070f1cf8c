package limbway.scenarios;

import java.time.LocalTime;
import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Point;
import limbway.model.study.Feeding;
import limbway.model.study.Study;
import limbway.model.study.Variant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Changes do what they say, and nothing else. */
class VariantsTest {

    private static Variant variant(String changes) {
        return Examples.sound(SmallYard.with("[{move: hatch, on: mast-2 at 5.5}]", changes))
                .study()
                .variants()
                .get(0);
    }

    private static Variant base() {
        return Examples.sound(SmallYard.read(SmallYard.TEXT)).study().base();
    }

    @Test
    void anEmptyListOfChangesGivesTheBaseAgain() {
        assertEquals(base().enclosure(), variant("[]").enclosure());
        assertEquals(base().feedings(), variant("[]").feedings());
        for (String example : Examples.ALL) {
            String text = Examples.text(example)
                    .replaceFirst("(?m)^variants:\n", "variants:\n  - {name: nothing, changes: []}\n");
            Study study = Examples.sound(ScenarioReader.read(example, text, Examples.FOLDER, Examples.ASSUMABLE))
                    .study();
            assertEquals(
                    study.base().enclosure(),
                    study.find("nothing").orElseThrow().enclosure());
        }
    }

    @Test
    void movingAResourceChangesItsPlaceOnly() {
        Enclosure moved = variant("[{move: hatch, on: mast-2 at 5.5}]").enclosure();
        Resource hatch = moved.resources().get(0);
        assertEquals(new Point(15, 6, 5.5), hatch.at());
        assertEquals("mast-2", hatch.on());
        assertEquals(4, hatch.stalls());
        assertEquals(base().enclosure().supports(), moved.supports());
        assertEquals(base().enclosure().resources().get(1), moved.resources().get(1));
    }

    @Test
    void whatHangsOnAMovedMastMovesWithIt() {
        Enclosure moved = variant("[{move: mast-1, at: [7, 8]}]").enclosure();
        assertEquals(new Point(7, 8, 5), moved.platforms().get(0).centre());
        assertEquals(new Point(7, 8, 6.5), support(moved, "rope-1").axis().start());
        assertEquals(new Point(7, 8, 5), moved.resources().get(1).at());
        assertEquals(support(base().enclosure(), "mast-2"), support(moved, "mast-2"));
    }

    @Test
    void removedThingsAreGoneAndAddedOnesStandAtTheEnd() {
        Enclosure changed = variant("[{remove: rope-1}, {add: {beam: bar, from: mast-1 at 6, to: mast-2 at 6, "
                        + "diameter: 0.08, material: timber}}, {add: {water: tap, at: [1, 1, 0]}}]")
                .enclosure();
        assertEquals(
                List.of("mast-1", "mast-2", "bar"),
                changed.supports().stream().map(Support::id).toList());
        assertEquals(
                List.of("hatch", "nest-1", "tap"),
                changed.resources().stream().map(Resource::id).toList());
    }

    @Test
    void aSupportMayBeRemovedWithWhatItCarriesOrReplacedUnderItsName() {
        String gone = "[{remove: mast-1}, {remove: deck-1}, {remove: nest-1}, {move: rope-1, from: [1, 1, 6]}]";
        assertEquals(2, variant(gone).enclosure().supports().size());
        String replaced = "[{remove: mast-1}, {add: {trunk: mast-1, at: [6, 5], height: 8, diameter: 0.3}}]";
        assertEquals(
                new Point(6, 5, 8),
                support(variant(replaced).enclosure(), "mast-1").axis().end());
    }

    @Test
    void alterChangesOneMeasure() {
        Enclosure changed = variant("[{alter: rope-1, diameter: 0.03}, {alter: hatch, portions: 2}]")
                .enclosure();
        assertEquals(0.03, support(changed, "rope-1").diameterM());
        assertEquals(
                support(base().enclosure(), "rope-1").axis(),
                support(changed, "rope-1").axis());
        assertEquals(2, changed.resources().get(0).stalls());
    }

    @Test
    void changesApplyInTheirOrder() {
        Enclosure changed = variant("[{move: hatch, at: [1, 1, 0]}, {move: hatch, at: [2, 2, 0]}]")
                .enclosure();
        assertEquals(new Point(2, 2, 0), changed.resources().get(0).at());
    }

    @Test
    void feedReplacesAllFeedingsOfThatPlaceAndUnfeedEndsThem() {
        List<Feeding> changed = variant("[{feed: hatch, at: [\"16:00\", \"7:30\"], energy-kj: 1000}]")
                .feedings();
        assertEquals(
                List.of(
                        new Feeding("hatch", LocalTime.of(7, 30), 1000),
                        new Feeding("hatch", LocalTime.of(16, 0), 1000)),
                changed);
        List<Feeding> other = variant(
                        "[{add: {food: tray, at: [1, 1, 0]}}, {unfeed: hatch}, {feed: tray, at: 12:00, energy-kj: 90}]")
                .feedings();
        assertEquals(List.of(new Feeding("tray", LocalTime.NOON, 90)), other);
    }

    /** Span 10 m in plan, sag 6 %: 0.6 m below the straight line at the middle, which is at height 5. */
    @Test
    @Tag("derived")
    void aRopeHangsInAParabola() {
        Enclosure changed = variant("[{add: {rope: line, from: [1, 1, 6], to: [11, 1, 4], diameter: 0.05, sag: 6 %}}]")
                .enclosure();
        List<Point> points = support(changed, "line").axis().points();
        Point middle = points.get(points.size() / 2);
        // rounding of three products only
        assertEquals(6, middle.xM(), 1e-12);
        assertEquals(4.4, middle.zM(), 1e-12);
        assertEquals(new Point(1, 1, 6), points.get(0));
        assertEquals(new Point(11, 1, 4), points.get(points.size() - 1));
    }

    /** 7 m high, 30 degrees to the east: the top stands 7 tan 30 = 4.0415 m east of the foot. */
    @Test
    @Tag("derived")
    void aPoleLeansTowardsACompassDirection() {
        Enclosure changed = variant(
                        "[{add: {pole: prop, at: [9, 9], height: 7, diameter: 0.1, material: timber, lean: {degrees: 30, towards: 90}}}, "
                                + "{add: {water: tap, on: prop at 3.5}}]")
                .enclosure();
        Point top = support(changed, "prop").axis().end();
        // the direction is turned by sine and cosine, which leave rounding of some 1e-16
        assertEquals(9 + 7 / Math.sqrt(3), top.xM(), 1e-12);
        assertEquals(9, top.yM(), 1e-12);
        Point half = changed.resources().get(2).at();
        assertEquals(9 + 3.5 / Math.sqrt(3), half.xM(), 1e-12);
        assertEquals(3.5, half.zM());
    }

    @Test
    void placesOnThingsAreFound() {
        Enclosure changed = variant("[{add: {water: a, on: mast-1 top}}, {add: {water: b, on: mast-2 at 50 %}}, "
                        + "{add: {water: c, on: \"deck-1 at [0.5, -0.25]\"}}, {add: {water: d, on: rope-1 start}}, "
                        + "{add: {water: e, on: rope-1 at 0 m}}]")
                .enclosure();
        List<Point> found =
                changed.resources().stream().skip(2).map(Resource::at).toList();
        assertEquals(
                List.of(
                        new Point(6, 5, 7),
                        new Point(15, 6, 3.5),
                        new Point(6.5, 4.75, 5),
                        new Point(6, 5, 6.5),
                        new Point(6, 5, 6.5)),
                found);
    }

    @Test
    void theHashFollowsTheText() {
        Reading.Read one = Examples.sound(SmallYard.read(SmallYard.TEXT));
        Reading.Read other = Examples.sound(SmallYard.read(SmallYard.TEXT + "# a remark\n"));
        assertEquals(one.study(), other.study());
        assertNotEquals(one.sha256Hex(), other.sha256Hex());
        assertTrue(one.sha256Hex().matches("[0-9a-f]{64}"));
    }

    private static Support support(Enclosure enclosure, String id) {
        return enclosure.supports().stream()
                .filter(support -> support.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
