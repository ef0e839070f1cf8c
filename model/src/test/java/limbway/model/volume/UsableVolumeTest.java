package limbway.model.volume;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Support;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.geometry.Segment;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.scene.RandomEnclosure;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What counts as usable, on drawn and random enclosures. */
@Tag("derived")
class UsableVolumeTest {

    private static final Body FEMALE =
            BodyCatalogue.standard().find("adult female").orElseThrow();
    private static final VolumeSettings ONE_METRE =
            VolumeSettings.standard().withReach(1).withTop(10);

    private static UsableVolume volume(Enclosure enclosure, VolumeSettings settings) {
        RouteGraph graph = RouteGraph.compile(enclosure, GraphSettings.forBodies(List.of(FEMALE)));
        return UsableVolume.of(enclosure, graph, MoveCosts.of(graph, FEMALE, EnergySettings.standard()), settings);
    }

    @Test
    void groundAloneIsASlab() {
        UsableVolume found = volume(Scene.yard(20, 10).build(), ONE_METRE);
        // nothing is sampled: each column is exactly one metre
        assertEquals(200, found.m3(), 1e-9);
        assertEquals(0, found.standardErrorM3(), 1e-9);
        assertEquals(0, found.offGroundM3(), 0);
        assertEquals(1, found.perGroundM2(), 1e-12);
        assertEquals(2000, found.grossM3(), 1e-9);
        assertEquals(200, found.floorM2(), 1e-9);
        assertEquals(0.1, found.share(), 1e-12);
    }

    @Test
    void topAndReachComeFromTheBodyUnlessGiven() {
        UsableVolume found = volume(Scene.yard(20, 10).pole("mast", 5, 5, 6).build(), VolumeSettings.standard());
        assertEquals(6 + FEMALE.overheadReachM(), found.topM(), 1e-12);
        assertEquals(FEMALE.gapReachM(), found.reachM(), 0);
    }

    @Test
    void aPoleThatTheBodyClimbsAddsItsColumn() {
        UsableVolume found = volume(Scene.yard(20, 10).pole("mast", 5, 5, 6).build(), ONE_METRE);
        double r = 1.04;
        // the pole is 0.08 m thick; above the slab: a cylinder of 5 m and half a ball
        double addedM3 = Math.PI * r * r * 5 + 2.0 / 3 * Math.PI * r * r * r;
        // four standard errors
        assertEquals(200 + addedM3, found.m3(), 4 * found.standardErrorM3());
        assertTrue(found.standardErrorM3() < 0.01 * addedM3, () -> found.toString());
    }

    @Test
    void whatNobodyCanHoldOrComeToAddsNothing() {
        Scene thick = Scene.yard(20, 10);
        Point foot = new Point(5, 5, 0);
        Enclosure tooThick = thick.beam("pillar", 0.8, foot, foot.atHeight(6)).build();
        assertEquals(200, volume(tooThick, ONE_METRE).m3(), 1e-9);
        Enclosure tooFar = Scene.yard(20, 10)
                .rope("cable", new Point(2, 5, 8), new Point(18, 5, 8))
                .deck("deck", 14, 2, 16, 4, 8.5)
                .crown("crown", 5, 5, 1, 7, 9)
                .build();
        UsableVolume aloft = volume(tooFar, ONE_METRE);
        assertEquals(200, aloft.m3(), 1e-9);
        assertEquals(200, aloft.floorM2(), 1e-9);
        // a pole makes all of it usable
        Enclosure joined = Scene.yard(20, 10)
                .pole("mast", 4, 5, 8)
                .rope("cable", new Point(2, 5, 8), new Point(18, 5, 8))
                .deck("deck", 14, 2, 16, 4, 8.5)
                .crown("crown", 5, 5, 1, 7, 9)
                .build();
        UsableVolume reached = volume(joined, ONE_METRE);
        assertEquals(204, reached.floorM2(), 1e-9);
        assertTrue(reached.offGroundM3() > 60, () -> reached.toString());
    }

    /** Only holds sampled along the line would leave gaps between them; the volume must not know of holds. */
    @Test
    void fineHoldsChangeNothing() {
        Enclosure enclosure = RandomEnclosure.of(3);
        GraphSettings coarse = GraphSettings.forBodies(List.of(FEMALE)).withHoldSpacing(1);
        RouteGraph graph = RouteGraph.compile(enclosure, coarse);
        MoveCosts costs = MoveCosts.of(graph, FEMALE, EnergySettings.standard());
        assertEquals(
                volume(enclosure, VolumeSettings.standard()).m3(),
                UsableVolume.of(enclosure, graph, costs, VolumeSettings.standard())
                        .m3(),
                0);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void cuttingEverySupportInTwoChangesNothing(long seed) {
        Enclosure enclosure = RandomEnclosure.of(seed);
        List<Support> halves = new ArrayList<>();
        for (Support support : enclosure.supports()) {
            Segment whole = new Segment(support.axis().start(), support.axis().end());
            halves.add(part(support, "-a", whole.a(), whole.at(0.5)));
            halves.add(part(support, "-b", whole.at(0.5), whole.b()));
        }
        UsableVolume before = volume(enclosure, VolumeSettings.standard());
        UsableVolume after = volume(enclosure.withSupports(halves), VolumeSettings.standard());
        // the same columns; only the last digits of joined ends may differ
        assertEquals(before.m3(), after.m3(), 1e-9 * before.m3());
        assertEquals(before.offGroundM3(), after.offGroundM3(), 1e-9 * before.m3());
    }

    private static Support part(Support support, String suffix, Point a, Point b) {
        return new Support(
                support.id() + suffix,
                support.kind(),
                Polyline.straight(a, b),
                support.diameterM(),
                support.tipDiameterM(),
                support.material(),
                support.bearing());
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void aNewSupportNeverTakesRoomAndALongerReachAddsSome(long seed) {
        Enclosure enclosure = RandomEnclosure.of(seed);
        List<Support> more = new ArrayList<>(enclosure.supports());
        more.add(RandomEnclosure.support(seed));
        UsableVolume before = volume(enclosure, ONE_METRE);
        // the same columns, each at least as long
        assertTrue(volume(enclosure.withSupports(more), ONE_METRE).m3() >= before.m3() - 1e-9, "seed " + seed);
        assertTrue(volume(enclosure, ONE_METRE.withReach(1.1)).m3() > before.m3(), "seed " + seed);
        assertTrue(before.m3() <= before.grossM3() && before.offGroundM3() <= before.m3() + 1e-9, "seed " + seed);
    }

    @Test
    void anOutlineThatIsNoRectangleCutsOff() {
        Outline triangle = new Outline(List.of(new Corner(0, 0), new Corner(10, 0), new Corner(0, 10)));
        UsableVolume found = volume(Scene.on(triangle).build(), ONE_METRE);
        assertEquals(50, found.m3(), 4 * found.standardErrorM3());
        assertEquals(500, found.grossM3(), 1e-9);
    }

    @Test
    void impossibleSettingsAreNamed() {
        var thrown = assertThrows(IllegalArgumentException.class, () -> ONE_METRE.withReach(-1));
        assertEquals("volume: reachM = -1.0, allowed above 0", thrown.getMessage());
    }
}
