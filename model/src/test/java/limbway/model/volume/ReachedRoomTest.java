package limbway.model.volume;

import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.Enclosure;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class ReachedRoomTest {

    private static final Body FEMALE =
            BodyCatalogue.standard().find("adult female").orElseThrow();
    private static final VolumeSettings ONE_METRE =
            new VolumeSettings(OptionalDouble.of(1), OptionalDouble.of(8), 40_000);

    private final Enclosure yard = Scene.yard(20, 10).pole("mast", 5, 5, 6).build();
    private final RouteGraph graph = RouteGraph.compile(yard, GraphSettings.forBodies(List.of(FEMALE)));
    private final MoveCosts costs = MoveCosts.of(graph, FEMALE, EnergySettings.standard());
    private final ReachedRoom room = ReachedRoom.of(yard, graph, costs, ONE_METRE);

    @Test
    void theWholeIsThatOfTheUsableVolume() {
        UsableVolume volume = UsableVolume.of(yard, graph, costs, ONE_METRE);
        assertEquals(volume.m3(), room.m3());
        assertEquals(volume.offGroundM3(), room.offGroundM3());
    }

    /** Round the mast a cylinder of its radius and a metre: between 2 m and 4 m it is two metres high. */
    @Test
    @Tag("derived")
    void aLayerIsTheDifferenceOfTwoHeights() {
        double radiusM = 1 + yard.supports().get(0).diameterM() / 2;
        double layer = room.offGroundM3(4) - room.offGroundM3(2);
        // 680 of 40,000 lines meet the cylinder, 90 of them near its rim: three standard errors, a part in 80
        assertEquals(2 * Math.PI * radiusM * radiusM, layer, layer / 80);
        assertEquals(room.offGroundM3(), room.offGroundM3(8));
        assertEquals(room.offGroundM3(), room.offGroundM3(100));
    }

    /** A capsule of radius 1 m around 5 m in the air: π · 5 + 4 π / 3 = 19.896753. */
    @Test
    @Tag("derived")
    void roomAlongALineIsACapsule() {
        Segment line = new Segment(new Point(8, 5, 4), new Point(13, 5, 4));
        assertEquals(19.896753, room.alongM3(List.of(line)), 0.01 * 19.896753);
        Segment half = new Segment(line.a(), line.at(0.5));
        Segment rest = new Segment(line.at(0.5), line.b());
        assertEquals(room.alongM3(List.of(line)), room.alongM3(List.of(half, rest)), 1e-9);
        assertEquals(0, room.alongM3(List.of()));
    }

    /** Two balls of radius 1 m whose middles are 1 m apart: 7.068583. */
    @Test
    @Tag("derived")
    void placesAreBallsAndCountOnceWhereTheyOverlap() {
        Point one = new Point(12, 5, 4);
        Point other = new Point(13, 5, 4);
        double found = room.alongM3(List.of(new Segment(one, one), new Segment(other, other)));
        assertEquals(7.068583, found, 0.015 * 7.068583);
        assertTrue(found < 2 * room.alongM3(List.of(new Segment(one, one))));
    }
}
