package limbway.scenarios;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import limbway.model.enclosure.Building;
import limbway.model.enclosure.Cover;
import limbway.model.enclosure.CoverKind;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Foliage;
import limbway.model.enclosure.Foliage.Season;
import limbway.model.enclosure.Platform;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Point;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Roofs, sails, buildings and trees come into the layout as they were written. */
class ShadeTest {

    private static final Season SUMMER = new Season(MonthDay.of(4, 15), MonthDay.of(10, 31));

    private static Cover cover(Enclosure enclosure, String id) {
        return enclosure.shading().covers().stream()
                .filter(cover -> cover.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aSailByCornersIsWhereTheyAre() {
        Cover cloth = cover(SmallShade.base(), "cloth");
        assertEquals(CoverKind.SAIL, cloth.kind());
        assertEquals(0.2, cloth.transmittance());
        assertEquals(
                List.of(new Point(12, 2, 4), new Point(16, 2, 4), new Point(16, 6, 3), new Point(12, 6, 3)),
                cloth.facet().corners());
    }

    @Test
    void aSailByOutlineIsLevelAndItsTransmittanceMayBeAPartOfOne() {
        Cover awning = cover(SmallShade.base(), "awning");
        assertEquals(0.4, awning.transmittance());
        assertEquals(
                List.of(new Point(18, 3, 3.5), new Point(20, 3, 3.5), new Point(20, 6, 3.5)),
                awning.facet().corners());
    }

    /** Corner of a 3 m by 2 m rectangle turned by 30 degrees, south-west first: worked out by hand. */
    @Test
    @Tag("derived")
    void aRoofOverADeckIsTurnedLikeItAndLiesAboveAndBesideIt() {
        Enclosure base = SmallShade.base();
        Cover shelter = cover(base, "shelter");
        assertEquals(CoverKind.ROOF, shelter.kind());
        assertEquals(0, shelter.transmittance());
        double cos = Math.sqrt(3) / 2;
        double sin = 0.5;
        Point corner = shelter.facet().corners().get(0);
        // sums of a few terms near 5: rounding alone
        assertEquals(5.5 - 1.5 * cos - 1 * sin, corner.xM(), 1e-12);
        assertEquals(4.5 + 1.5 * sin - 1 * cos, corner.yM(), 1e-12);
        assertEquals(5.2, corner.zM(), 1e-12);
        assertEquals(6, shelter.facet().areaM2(), 1e-12);
        // its sides run like those of the deck
        Platform deck = base.platforms().get(0);
        Corner a = deck.outline().corners().get(0);
        Corner b = deck.outline().corners().get(1);
        Point edge = shelter.facet().corners().get(1).minus(corner);
        assertEquals(0, (b.xM() - a.xM()) * edge.yM() - (b.yM() - a.yM()) * edge.xM(), 1e-12);
    }

    @Test
    void aRoofOverADeckWithAnOutlineHasNoTurnAndLiesOverItsMiddle() {
        Enclosure enclosure =
                SmallShade.variant("[{move: deck, outline: [[2, 2], [4, 2], [4, 4], [2, 4]], height: 1.5}, "
                        + "{move: shelter, shift: [0, 0]}]");
        assertEquals(
                List.of(new Point(1.5, 2, 3.7), new Point(4.5, 2, 3.7), new Point(4.5, 4, 3.7), new Point(1.5, 4, 3.7)),
                cover(enclosure, "shelter").facet().corners());
    }

    @Test
    void aRoofMovesWithTheDeckBelowIt() {
        Point before = cover(SmallShade.base(), "shelter").facet().corners().get(0);
        Point after = cover(SmallShade.variant("[{move: mast, at: [7, 6]}]"), "shelter")
                .facet()
                .corners()
                .get(0);
        // sums of a few terms near 7: rounding alone
        assertEquals(0, after.minus(before).distanceM(new Point(2, 1, 0)), 1e-12);
    }

    @Test
    void variantsAddMoveRemoveAndAlterCovers() {
        Enclosure enclosure = SmallShade.variant("""
                [{add: {roof: lid, over: sling, size: [2, 2], rise: 1}}, {remove: shelter},
                 {move: cloth, corners: [[1, 1, 3], [3, 1, 3], [3, 4, 3]]}, {move: awning, over: deck, size: [2, 2], rise: 2},
                 {alter: cloth, transmittance: 0.5}]""");
        assertEquals(
                List.of("cloth", "awning", "lid"),
                enclosure.shading().covers().stream().map(Cover::id).toList());
        assertEquals(
                new Point(1, 1, 3), cover(enclosure, "cloth").facet().corners().get(0));
        assertEquals(0.5, cover(enclosure, "cloth").transmittance());
        assertEquals(4, cover(enclosure, "awning").facet().areaM2(), 1e-12); // a square root of a square
        assertEquals(3, cover(enclosure, "lid").facet().corners().get(0).zM());
    }

    @Test
    void neighboursMayStandOutsideTheGround() {
        Enclosure base = SmallShade.base();
        Building house = base.shading().buildings().get(0);
        assertEquals("house", house.id());
        assertEquals(0, house.baseZM());
        assertEquals(150, house.topZM());
        assertEquals(
                List.of(new Crown("plane", "", new Point(35, 4, 0), 4, 3, 14, Foliage.EVERGREEN)),
                base.shading().neighbours());
        assertTrue(base.supports().stream().noneMatch(support -> support.id().equals("plane")));
    }

    @Test
    void variantsChangeNeighbours() {
        Enclosure enclosure = SmallShade.variant("""
                [{alter: house, top: 8}, {move: plane, at: [40, 4, 2]},
                 {alter: plane, leaf-area-index: 3, leaves: {from: 10-01, to: 05-15}},
                 {add: {tree: lime, at: [-8, 3], height: 9, crown-radius: 3, crown-base: 2, leaves: evergreen}}]""");
        assertEquals(8, enclosure.shading().buildings().get(0).topZM());
        Season southern = new Season(MonthDay.of(10, 1), MonthDay.of(5, 15));
        assertEquals(
                List.of(
                        new Crown("plane", "", new Point(40, 4, 2), 4, 5, 16, new Foliage(3, Optional.of(southern))),
                        new Crown("lime", "", new Point(-8, 3, 0), 3, 2, 9)),
                enclosure.shading().neighbours());
    }

    @Test
    void aTrunkKeepsTheLeavesThatItSays() {
        assertEquals(
                List.of(new Crown(
                        "oak crown", "oak", new Point(17, 8, 0), 2, 2, 6, new Foliage(5, Optional.of(SUMMER)))),
                SmallShade.base().crowns());
    }

    @Test
    void aTrunkThatSaysNothingOfItsLeavesIsEvergreen() {
        Enclosure yard = Examples.read("yard.yaml").study().base().enclosure();
        assertTrue(yard.crowns().size() > 0);
        yard.crowns().forEach(crown -> assertEquals(Foliage.EVERGREEN, crown.foliage()));
    }

    @Test
    void aBuildingOnASlopeStandsOnTheLowestGroundAtItsCorners() {
        Reading reading = SmallShade.with(
                "[0, 10]]}", "[0, 10]], heights: {points: [[0, 0, 1], [20, 0, 1], [20, 10, 1.5], [0, 10, 1.5]]}}");
        assertEquals(
                1,
                Examples.sound(reading)
                        .study()
                        .base()
                        .enclosure()
                        .shading()
                        .buildings()
                        .get(0)
                        .baseZM());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"leaves: Evergreen", "leaves: {from: 4-15, to: 10-31}", "leaves: {from: '11-01', to: '03-01'}"})
    void leavesAreWrittenInSeveralWays(String leaves) {
        Examples.sound(SmallShade.with("leaves: {from: \"04-15\", to: \"10-31\"}", leaves));
    }

    @Test
    void aRoofMayReachBeyondTheGroundAndASailMayHangUpright() {
        Examples.sound(
                SmallShade.with("outline: [[18, 3], [20, 3], [20, 6]]", "outline: [[-5, -5], [50, -5], [50, 50]]"));
        Examples.sound(SmallShade.with(
                "[[12, 2, 4], [16, 2, 4], [16, 6, 3], [12, 6, 3]]",
                "[[12, 2, 4], [16, 2, 4], [16, 2, 2], [12, 2, 2]]"));
    }
}
