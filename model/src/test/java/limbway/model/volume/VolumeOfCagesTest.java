package limbway.model.volume;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Bounds;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.HotWire;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.PanelKind;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.geometry.Terrain;
import limbway.model.geometry.Triangle;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.scene.FurnishedEnclosure;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Usable volume of enclosures with mesh, walls, moats, wire and slopes. */
@Tag("derived")
class VolumeOfCagesTest {

    private static final double SIGMAS = 4;
    private static final double FINGERS_FIT_M = 0.05;
    private static final Body FEMALE =
            BodyCatalogue.standard().find("adult female").orElseThrow();
    private static final VolumeSettings ONE_METRE =
            VolumeSettings.standard().withReach(1).withTop(10);

    private static UsableVolume volume(Enclosure enclosure, VolumeSettings settings) {
        RouteGraph graph = RouteGraph.compile(enclosure, GraphSettings.forBodies(List.of(FEMALE)));
        return UsableVolume.of(enclosure, graph, MoveCosts.of(graph, FEMALE, EnergySettings.standard()), settings);
    }

    private static Panel mesh(String id, double openingM, Point... corners) {
        return new Panel(id, PanelKind.MESH, new Facet(List.of(corners)), openingM, 0.005, OptionalDouble.empty());
    }

    private static Panel wall(String id, double x0, double y0, double x1, double y1, double baseM, double topM) {
        return mesh(
                id,
                FINGERS_FIT_M,
                new Point(x0, y0, baseM),
                new Point(x1, y1, baseM),
                new Point(x1, y1, topM),
                new Point(x0, y0, topM));
    }

    private static List<Panel> cage(double x0, double y0, double x1, double y1, double topM) {
        return List.of(
                wall("south", x0, y0, x1, y0, 0, topM),
                wall("east", x1, y0, x1, y1, 0, topM),
                wall("north", x1, y1, x0, y1, 0, topM),
                wall("west", x0, y1, x0, y0, 0, topM),
                mesh(
                        "roof",
                        FINGERS_FIT_M,
                        new Point(x0, y0, topM),
                        new Point(x1, y0, topM),
                        new Point(x1, y1, topM),
                        new Point(x0, y1, topM)));
    }

    private static Bounds barriers(Barrier... barriers) {
        return new Bounds(List.of(barriers), List.of(), List.of());
    }

    private static Bounds wires(HotWire... wires) {
        return new Bounds(List.of(), List.of(wires), List.of());
    }

    @Test
    void aSmallCageIsUsableToItsLastCorner() {
        Scene floor = Scene.yard(2, 2).food("bowl", 1, 1, 0);
        UsableVolume found = volume(floor.build().withPanels(cage(0, 0, 2, 2, 2)), ONE_METRE.withReach(1.2));
        // the middle is 1 m from floor, roof and walls; rounding of sums over the columns only
        assertEquals(8, found.m3(), 1e-9);
        assertEquals(8, found.grossM3(), 1e-9);
        assertEquals(1, found.share(), 1e-9);
        assertEquals(2, found.topM(), 0);
        assertEquals(2, found.perGroundM2(), 1e-9);
    }

    @Test
    void outsideAClosedCageNothingCounts() {
        Scene yard = Scene.yard(10, 10).food("bowl", 5, 5, 0).pole("mast", 8.5, 8.5, 4);
        UsableVolume found = volume(yard.build().withPanels(cage(4, 4, 6, 6, 2)), ONE_METRE.withReach(1.2));
        assertEquals(8, found.m3(), SIGMAS * found.standardErrorM3());
        assertTrue(found.standardErrorM3() < 0.03, () -> found.toString());
        // the mesh bars half a centimetre of the ground on each side
        assertEquals(1.99 * 1.99, found.floorM2(), 1e-9);
        assertEquals(1000, found.grossM3(), 1e-9);
    }

    @Test
    void aLargeCageHasAHollow() {
        Scene floor = Scene.yard(8, 7).food("bowl", 4, 3, 0);
        UsableVolume found = volume(floor.build().withPanels(cage(0, 0, 8, 7, 5)), ONE_METRE);
        // all but what is farther than 1 m from floor, roof and walls
        assertEquals(8 * 7 * 5 - 6 * 5 * 3, found.m3(), SIGMAS * found.standardErrorM3());
        // of its standing on the ground only what mesh does not reach is left
        assertEquals(8 * 7 * 5 - 6 * 5 * 4, found.offGroundM3(), SIGMAS * found.standardErrorM3());
        assertTrue(found.standardErrorM3() < 0.2, () -> found.toString());
    }

    @Test
    void meshTooFineForTheFingersOrTooHighToComeToAddsNothing() {
        Enclosure bare = Scene.yard(20, 10).food("bowl", 10, 2, 0).build();
        Point a = new Point(8, 5, 0);
        Point b = new Point(12, 5, 0);
        Enclosure fine = bare.withPanels(List.of(mesh("fine", 0.005, a, b, b.atHeight(3), a.atHeight(3))));
        assertEquals(0, volume(fine, ONE_METRE).offGroundM3(), 0);
        Enclosure high = bare.withPanels(List.of(wall("high", 8, 5, 12, 5, 5, 8)));
        assertEquals(0, volume(high, ONE_METRE).offGroundM3(), 0);
        Enclosure low = bare.withPanels(List.of(wall("low", 8, 5, 12, 5, 0, 3)));
        UsableVolume found = volume(low, ONE_METRE);
        // as in StopsTest: slab, half tubes up two sides, half a tube on top, two quarter balls
        double expectedM3 = 24 + Math.PI * 3 + Math.PI * 2 + 2.0 / 3 * Math.PI;
        assertEquals(expectedM3, found.offGroundM3(), SIGMAS * found.standardErrorM3());
        assertTrue(found.standardErrorM3() < 0.01 * expectedM3, () -> found.toString());
    }

    @Test
    void groundBeyondAMoatIsNotTheirsButTheirHandsReachOverTheWater() {
        Barrier moat = new Barrier("moat", BarrierKind.WATER, Outline.rectangle(0, 6, 20, 8), -1.5, 0);
        Enclosure yard = Scene.yard(20, 12).food("bowl", 10, 2, 0).build().withBounds(barriers(moat));
        UsableVolume found = volume(yard, ONE_METRE);
        // six metres of ground, and a quarter of a tube over the water
        assertEquals(20 * 6 + 20 * Math.PI / 4, found.m3(), SIGMAS * found.standardErrorM3());
        assertEquals(120, found.floorM2(), 1e-9);
        // glass of the same footprint lets nothing through
        Barrier glass = new Barrier("glass", BarrierKind.GLASS, moat.footprint(), 0, 3);
        UsableVolume behind = volume(yard.withBounds(barriers(glass)), ONE_METRE);
        assertEquals(120, behind.m3(), SIGMAS * Math.max(behind.standardErrorM3(), 0.01));
    }

    @Test
    void underWaterNothingCounts() {
        // a pond as high as a man's waist over ground that slopes nowhere: its prism is taken out
        Barrier pond = new Barrier("pond", BarrierKind.WATER, Outline.rectangle(8, 4, 12, 6), -1, 0.5);
        Enclosure bare = Scene.yard(20, 10)
                .food("bowl", 2, 2, 0)
                .pole("mast", 7.5, 5, 4)
                .rope("line", new Point(7.5, 5, 0.6), new Point(12.5, 5, 0.6))
                .build();
        Barrier shallow = new Barrier("pond", BarrierKind.WATER, pond.footprint(), -1, 0);
        double dryM3 = volume(bare.withBounds(barriers(shallow)), ONE_METRE).m3();
        UsableVolume wet = volume(bare.withBounds(barriers(pond)), ONE_METRE);
        // the rope is at 0.6 m and reaches everything 0.5 m deep over the 4 by 2 m of the pond
        assertEquals(dryM3 - 8 * 0.5, wet.m3(), 2 * SIGMAS * wet.standardErrorM3());
    }

    @Test
    void aRingOfLiveWireCutsAPoleInTwo() {
        Enclosure free =
                Scene.yard(20, 10).food("bowl", 2, 2, 0).pole("mast", 10, 5, 8).build();
        HotWire ring =
                new HotWire.Strand("ring", Polyline.straight(new Point(9.8, 5.15, 4), new Point(10.2, 5.15, 4)), 0.4);
        UsableVolume found = volume(free.withBounds(wires(ring)), ONE_METRE);
        // up to between 3 and 3.7 m: below the clearance of the wire, by at most the distance of holds
        double r = 1.04;
        double upTo3M3 = Math.PI * r * r * 3 + 2.0 / 3 * Math.PI * r * r * r;
        assertTrue(found.offGroundM3() > upTo3M3 - 1, () -> found.toString());
        assertTrue(found.offGroundM3() < upTo3M3 + 0.7 * Math.PI * r * r, () -> found.toString());
        assertTrue(volume(free, ONE_METRE).offGroundM3() > upTo3M3 + 15);
    }

    @Test
    void liveWireAlongAMeshWallCutsOffItsUpperPart() {
        Enclosure free =
                Scene.yard(20, 10).food("bowl", 10, 2, 0).build().withPanels(List.of(wall("mesh", 0, 5, 20, 5, 0, 6)));
        double freeM3 = volume(free, ONE_METRE).offGroundM3();
        HotWire south =
                new HotWire.Strand("south", Polyline.straight(new Point(-1, 4.8, 3), new Point(21, 4.8, 3)), 0.45);
        UsableVolume found = volume(free.withBounds(wires(south)), ONE_METRE);
        // one side, for the mesh parts the yard from edge to edge, up to the clearance of the wire at 2.6 m, and a
        // metre
        // beyond, less the wire; without wire the other side too, come to over the top
        assertTrue(found.offGroundM3() < 20 * 3.6, () -> freeM3 + ", " + found);
        assertTrue(found.offGroundM3() > 20 * 2.6, () -> freeM3 + ", " + found);
        assertTrue(freeM3 > 2 * 20 * 6, () -> "" + freeM3);
    }

    @Test
    void groundThatSlopesCarriesItsLayerAndFillsTheRoom() {
        // z = 0.75 x over 10 by 10 m
        Point a = new Point(0, 0, 0);
        Point b = new Point(10, 0, 7.5);
        Point c = new Point(10, 10, 7.5);
        Point d = new Point(0, 10, 0);
        Terrain slope = new Terrain(List.of(new Triangle(a, b, c), new Triangle(a, c, d)));
        UsableVolume found = volume(Scene.yard(10, 10).terrain(slope).build(), ONE_METRE);
        // upright, a layer 1 m thick is 1.25 m high; at the upper end the ground ends: a triangle 0.75 / 2 is lost but
        // for a sector of the slope's angle
        double lostM2 = (0.75 - StrictMath.atan(0.75)) / 2;
        assertEquals(10 * (10 * 1.25 - lostM2), found.m3(), SIGMAS * found.standardErrorM3());
        assertTrue(found.standardErrorM3() < 0.1, () -> found.toString());
        assertEquals(1000 - 375, found.grossM3(), 1e-9);
        assertEquals(100, found.floorM2(), 1e-6);
    }

    @Test
    void aRoofThatSlopesBoundsTheRoom() {
        List<Panel> gable = List.of(
                mesh(
                        "low",
                        FINGERS_FIT_M,
                        new Point(0, 0, 3),
                        new Point(4, 0, 5),
                        new Point(4, 6, 5),
                        new Point(0, 6, 3)),
                mesh(
                        "high",
                        FINGERS_FIT_M,
                        new Point(4, 0, 5),
                        new Point(8, 0, 3),
                        new Point(8, 6, 3),
                        new Point(4, 6, 5)));
        Enclosure hall = Scene.yard(8, 6).food("bowl", 4, 3, 0).build().withPanels(gable);
        assertEquals(8 * 6 * 4, volume(hall, ONE_METRE).grossM3(), 1e-9);
        // half a roof is none
        assertEquals(
                8 * 6 * 10,
                volume(hall.withPanels(gable.subList(0, 1)), ONE_METRE).grossM3(),
                1e-9);
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void oneMoreStopNeverGivesRoom(long seed) {
        Enclosure enclosure = FurnishedEnclosure.of(seed);
        UsableVolume before = volume(enclosure, ONE_METRE);
        UsableVolume after = volume(FurnishedEnclosure.moreClosed(enclosure, seed), ONE_METRE);
        // columns near a new screen are tried at random heights, so that both errors count
        double errorM3 = Math.hypot(before.standardErrorM3(), after.standardErrorM3());
        assertTrue(after.m3() <= before.m3() + SIGMAS * errorM3, "seed " + seed);
        assertTrue(before.m3() <= before.grossM3(), "seed " + seed);
    }

    @Test
    void theOrderOfPanelsChangesNothing() {
        List<Panel> panels = new ArrayList<>(cage(4, 4, 6, 6, 2));
        Enclosure yard = Scene.yard(10, 10).food("bowl", 5, 5, 0).build();
        double oneM3 = volume(yard.withPanels(panels), ONE_METRE).m3();
        Collections.reverse(panels);
        assertEquals(oneM3, volume(yard.withPanels(panels), ONE_METRE).m3(), 1e-9);
    }
}
