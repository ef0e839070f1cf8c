package limbway.scenarios;

import java.time.LocalTime;
import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Bearing;
import limbway.model.enclosure.Door;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.HotWire;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.OpenHours;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.PanelKind;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.PlatformKind;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What a scenario says of panels, barriers, wires, doors and supports that give way arrives in the enclosure. */
class CageTest {

    private final Enclosure cage = SmallCage.base();

    private Support support(String id) {
        return SmallCage.support(cage, id);
    }

    @Test
    void aPoleTapersOnlyIfItSaysSoAndABranchToHalf() {
        assertEquals(0.10, support("mast").tipDiameterM());
        assertEquals(0.06, support("prop").tipDiameterM());
        assertEquals(0.3, support("tree").tipDiameterM());
        Support limb = support("limb");
        assertEquals(SupportKind.BRANCH, limb.kind());
        assertEquals(Material.BARK, limb.material());
        assertEquals(0.04, limb.tipDiameterM());
        assertEquals(new Point(5, 5, 3), limb.axis().start());
        assertEquals(new Point(7, 6, 3.5), limb.axis().end());
    }

    @Test
    void whatIsNotTiedSwaysAndATrunkDoesNot() {
        assertFalse(support("mast").bearing().sways(), "a branch and a ladder hang on it");
        assertTrue(support("prop").bearing().sways());
        assertTrue(support("limb").bearing().sways());
        assertFalse(support("tree").bearing().sways());
        assertFalse(support("line").bearing().sways());
        Enclosure said = SmallCage.variant("[{alter: mast, sways: true}, {alter: prop, sways: no}]");
        assertTrue(SmallCage.support(said, "mast").bearing().sways());
        assertFalse(SmallCage.support(said, "prop").bearing().sways());
    }

    @Test
    void aRopeThatIsAddedTiesAPole() {
        Enclosure tied = SmallCage.variant("[{add: {rope: tie, from: prop top, to: [12, 5, 3], diameter: 0.03}}]");
        assertFalse(SmallCage.support(tied, "prop").bearing().sways());
    }

    @Test
    void stiffnessAndLoadAreReadInTheirUnits() {
        Enclosure read = SmallCage.variant("[{alter: tree, bears: 150 kg}]");
        assertEquals(
                new Bearing(OptionalDouble.of(9000), OptionalDouble.of(150), false),
                SmallCage.support(read, "tree").bearing());
    }

    @Test
    void aLadderBeginsOnTheGround() {
        assertEquals(new Point(5, 3, 0), support("steps").axis().start());
        assertEquals(new Point(5, 5, 4), support("steps").axis().end());
    }

    /** Ten metres apart, 10.6 m long: the sag is 10 sqrt(3/8 0.06) = 1.5 m. */
    @Test
    @Tag("derived")
    void aRopeHangsThroughAsItsLengthAllows() {
        List<Point> points = support("line").axis().points();
        // rounding of a square root and three products only
        assertEquals(1.5, points.get(points.size() / 2).zM(), 1e-9);
        // the two terms of the series miss the drawn length by the third, 32/5 0.15^4 of 10 m, and by the corners
        assertEquals(10.6, support("line").axis().lengthM(), 0.05);
    }

    @Test
    void aHammockIsAPlatformThatGives() {
        Platform sling = cage.platforms().get(0);
        assertEquals(PlatformKind.HAMMOCK, sling.kind());
        assertEquals(OptionalDouble.of(120), sling.bearsKg());
        assertEquals(new Point(15, 5, 2), sling.centre());
    }

    @Test
    void panelsAreGivenUprightByCornersOrLevel() {
        Panel side = cage.panels().get(0);
        assertEquals(
                List.of(new Point(0, 0, 0), new Point(20, 0, 0), new Point(20, 0, 4), new Point(0, 0, 4)),
                side.corners());
        assertEquals(PanelKind.MESH, side.kind());
        assertEquals(0.05, side.openingM());
        assertEquals(0.004, side.strandDiameterM());
        assertEquals(OptionalDouble.empty(), side.stiffnessNPerM());
        Panel slope = cage.panels().get(1);
        assertEquals(PanelKind.NET, slope.kind());
        assertEquals(0.012, slope.strandDiameterM());
        assertEquals(OptionalDouble.of(1500), slope.stiffnessNPerM());
        assertEquals(new Point(3, 9, 3), slope.corners().get(2));
        Panel roof = cage.panels().get(2);
        assertEquals(new Point(20, 10, 4.5), roof.corners().get(2));
        assertEquals(0.04, roof.openingM());
    }

    @Test
    void aWallIsAsThickAsItSaysRoundItsLine() {
        Barrier back = cage.bounds().barriers().get(0);
        assertEquals(BarrierKind.WALL, back.kind());
        // 20 m by the usual 0.2 m; sums of products of a few metres round to some 1e-15
        assertEquals(4.0, back.footprint().areaM2(), 1e-9);
        assertTrue(back.footprint().covers(10, 9.901) && !back.footprint().covers(10, 9.899));
        assertEquals(0, back.baseZM());
        assertEquals(3, back.topZM());
        Barrier pane = cage.bounds().barriers().get(1);
        assertEquals(BarrierKind.GLASS, pane.kind());
        assertEquals(4 * 0.03, pane.footprint().areaM2(), 1e-9);
        assertEquals(0.5, pane.baseZM());
    }

    @Test
    void waterLiesInTheGroundAndIsToldFromADrinkerByItsOutline() {
        Barrier pool = cage.bounds().barriers().get(2);
        assertEquals(new Barrier("pool", BarrierKind.WATER, Outline.rectangle(8, 1, 11, 3), -1.2, 0), pool);
        Enclosure more = SmallCage.variant("[{add: {water: tap, at: [1, 1]}}, "
                + "{add: {water: moat, outline: [[16, 1], [19, 1], [19, 3], [16, 3]]}}]");
        assertEquals("tap", more.resources().get(2).id());
        assertEquals("moat", more.bounds().barriers().get(3).id());
        assertEquals(-1.5, more.bounds().barriers().get(3).baseZM());
    }

    @Test
    void liveWireKeepsItsClearance() {
        HotWire hot = cage.bounds().hotWires().get(0);
        assertEquals(0.5, hot.clearanceM());
        assertEquals(
                new HotWire.Planting("ferns", Outline.rectangle(13, 1, 15, 2), 0, 1, 0.3),
                cage.bounds().hotWires().get(1));
    }

    @Test
    void doorsHaveTheirHoursInTheOrderOfTheDay() {
        Door slide = cage.bounds().doors().get(0);
        assertEquals("side", slide.in());
        assertEquals(1.2, slide.heightM());
        assertEquals(
                List.of(
                        new OpenHours(LocalTime.of(8, 0), LocalTime.NOON),
                        new OpenHours(LocalTime.of(14, 0), LocalTime.of(18, 0))),
                slide.open());
        Door lift = cage.bounds().doors().get(1);
        assertEquals(new Point(6, 10, 1), lift.sill().a());
        assertEquals(List.of(), lift.open());
        Door always = SmallCage.variant("[{alter: lift, open: always}]")
                .bounds()
                .doors()
                .get(1);
        assertTrue(always.isOpenAt(0) && always.isOpenAt(86_399));
        Door night = SmallCage.variant("[{alter: lift, open: \"20:00-24:00\"}]")
                .bounds()
                .doors()
                .get(1);
        assertTrue(night.isOpenAt(86_399) && !night.isOpenAt(0));
    }

    @Test
    void aNestMayHangBeforeAPanel() {
        assertEquals(new Point(10, 0.3, 2.5), cage.resources().get(1).at());
    }

    @Test
    void everyKindCanBeMovedAlteredRemovedAndAdded() {
        Enclosure changed = SmallCage.variant("[{move: slope, from: [0, 6], to: [3, 6], bottom: 1, top: 2}, "
                + "{move: back, outline: [[0, 9], [20, 9], [20, 10], [0, 10]]}, {alter: back, top: 2.5}, "
                + "{remove: lift}, {move: hot, line: [[0, 9, 2], [20, 9, 2]]}, {alter: hot, clearance: 0.2}, "
                + "{remove: pool}, {remove: ferns}, {move: slide, from: [4, 0], to: [4.8, 0], sill: 0.5}, "
                + "{alter: side, opening: 0.03}, {alter: limb, tip-diameter: 0.02}, "
                + "{add: {door: hole, in: pane, from: [20, 3], to: [20, 4], height: 1, open: always}}, "
                + "{alter: line, sag: 5 %}]");
        assertEquals(new Point(3, 6, 2), changed.panels().get(1).corners().get(2));
        assertEquals(0.03, changed.panels().get(0).openingM());
        Barrier back = changed.bounds().barriers().get(0);
        assertEquals(
                List.of(new Corner(0, 9), new Corner(20, 9), new Corner(20, 10), new Corner(0, 10)),
                back.footprint().corners());
        assertEquals(2.5, back.topZM());
        assertEquals(2, changed.bounds().barriers().size());
        assertEquals(1, changed.bounds().hotWires().size());
        assertEquals(0.2, changed.bounds().hotWires().get(0).clearanceM());
        assertEquals(
                List.of("slide", "hole"),
                changed.bounds().doors().stream().map(Door::id).toList());
        assertEquals(
                new Point(4, 0, 0.5), changed.bounds().doors().get(0).sill().a());
        assertEquals(
                new Point(20, 3, 0.5), changed.bounds().doors().get(1).sill().a());
        assertEquals(0.02, SmallCage.support(changed, "limb").tipDiameterM());
        List<Point> line = SmallCage.support(changed, "line").axis().points();
        // 5 % of 10 m below height 3
        assertEquals(2.5, line.get(line.size() / 2).zM(), 1e-12);
    }

    @Test
    void anEmptyListOfChangesGivesTheCageAgain() {
        assertEquals(cage, SmallCage.variant("[]"));
    }
}
