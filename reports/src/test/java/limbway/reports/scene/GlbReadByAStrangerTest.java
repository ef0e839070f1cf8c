package limbway.reports.scene;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import de.javagl.jgltf.model.AccessorFloatData;
import de.javagl.jgltf.model.GltfModel;
import de.javagl.jgltf.model.MeshPrimitiveModel;
import de.javagl.jgltf.model.NodeModel;
import de.javagl.jgltf.model.io.GltfModelReader;
import de.javagl.jgltf.model.v2.MaterialModelV2;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.Building;
import limbway.model.enclosure.Cover;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Door;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.HotWire;
import limbway.model.enclosure.Obstacle;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.Support;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.reports.FullYard;
import limbway.sim.habitat.Habitat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** The scene as a general glTF library reads it, against the enclosure that it was written from. */
class GlbReadByAStrangerTest {

    private static Habitat habitat;
    private static Enclosure enclosure;
    private static GltfModel model;

    @BeforeAll
    static void read() throws IOException {
        habitat = FullYard.habitat();
        enclosure = habitat.layout().enclosure();
        model = new GltfModelReader().readWithoutReferences(new ByteArrayInputStream(EnclosureGlb.bytes(habitat)));
    }

    @Test
    void everythingThatStandsThereHasANodeOfItsNameUnderItsGroup() {
        Map<String, List<String>> expected = new LinkedHashMap<>();
        expected.put("ground", List.of("ground"));
        expected.put("obstacles", ids(enclosure.ground().obstacles().stream().map(Obstacle::id)));
        expected.put("supports", ids(enclosure.supports().stream().map(Support::id)));
        expected.put("platforms", ids(enclosure.platforms().stream().map(Platform::id)));
        expected.put("crowns", ids(enclosure.crowns().stream().map(Crown::id)));
        expected.put("panels", ids(enclosure.panels().stream().map(Panel::id)));
        expected.put("resources", ids(enclosure.resources().stream().map(Resource::id)));
        expected.put("barriers", ids(enclosure.bounds().barriers().stream().map(Barrier::id)));
        expected.put("hot wire", ids(enclosure.bounds().hotWires().stream().map(HotWire::id)));
        expected.put("doors", ids(enclosure.bounds().doors().stream().map(Door::id)));
        expected.put("covers", ids(enclosure.shading().covers().stream().map(Cover::id)));
        expected.put("buildings", ids(enclosure.shading().buildings().stream().map(Building::id)));
        expected.put(
                "trees beside", ids(enclosure.shading().neighbours().stream().map(Crown::id)));
        Map<String, List<String>> found = new LinkedHashMap<>();
        NodeModel root = model.getSceneModels().get(0).getNodeModels().get(0);
        assertEquals("enclosure", root.getName());
        for (NodeModel group : root.getChildren()) {
            found.put(group.getName(), ids(group.getChildren().stream().map(NodeModel::getName)));
            for (NodeModel thing : group.getChildren()) {
                assertEquals(thing.getName(), extras(thing).get("id"));
                assertEquals(1, thing.getMeshModels().size(), thing.getName());
            }
        }
        assertEquals(expected, found);
        assertEquals("branch", extras(node("limb")).get("kind"));
        assertEquals("net", extras(node("net")).get("kind"));
        assertEquals("glass", extras(node("window")).get("kind"));
        assertEquals("roof", extras(node("deck-roof")).get("kind"));
        assertEquals("sail", extras(node("sling-sail")).get("kind"));
        assertEquals(0.04, extras(node("limb")).get("tip_diameter_m"));
    }

    @Test
    @Tag("derived")
    void heightPointsUpAndNorthPointsAway() {
        // from (x, y, z up) to (x, z, -y): the net from (7, 9, 1) to (9, 11, 2.6)
        // places are rounded to floats
        double rounded = 1e-5;
        assertBox("net", new double[] {7, 1, -11}, new double[] {9, 2.6, -9}, rounded);
        assertBox("deck", new double[] {8, 2.94, -5.6}, new double[] {10, 3, -4}, rounded);
        // a roof that rises from 5 to 5.6 m towards the north
        assertBox("deck-roof", new double[] {7.6, 5, -6}, new double[] {10.4, 5.6, -3.6}, rounded);
        // of water the surface is drawn
        assertBox("moat", new double[] {21, -0.1, -15.6}, new double[] {24, -0.1, 0}, rounded);
        // the round ends of what a straight wire keeps free reach its clearance of 0.3 m beyond it
        assertBox("wall-wire", new double[] {4.7, 3.3, -15.6}, new double[] {24.3, 3.9, -15}, rounded);
        // planting 0 to 3 m high with 0.5 m about it: 17.5 to 19.5 east, 6 to 8 north.
        // A round corner is drawn by 8 chords a quarter: up to r (1 - cos 5.625 degrees) = 2.4 mm short
        assertBox("bamboo", new double[] {17, -0.5, -8.5}, new double[] {20, 3.5, -5.5}, 0.0025);
    }

    @Test
    @Tag("derived")
    void shapesEncloseTheVolumeThatTheyShould() {
        // a prism of 2 by 1.6 m, 6 cm thick
        assertVolume(2 * 1.6 * 0.06, "deck");
        assertVolume(24 * 0.4 * 4, "north-wall");
        assertVolume(8 * 9 * 4.5, "night-house");
        // a cut pyramid on a twelve-sided foot, of area 3 r², and top: L/3 (A + sqrt(A B) + B)
        double foot = 3 * 0.06 * 0.06;
        double tip = 3 * 0.04 * 0.04;
        assertVolume(6.0 / 3 * (foot + Math.sqrt(foot * tip) + tip), "mast");
        // mitred in the middle, a bent rod has the volume of a straight one as long
        assertVolume((2 + 2.5) * 3 * 0.06 * 0.06, "elbow");
        // 24 sides of area 12 r² sin 15 degrees
        assertVolume(12 * 2.4 * 2.4 * Math.sin(Math.toRadians(15)) * 3.5, "fig crown");
    }

    @Test
    void panelsAndWaterAreSeenThroughAndFromBothSides() {
        for (String name : List.of(
                "west-mesh", "net", "window", "moat", "fig crown", "wall-wire", "deck-roof", "sling-sail", "lime")) {
            MaterialModelV2 paint = (MaterialModelV2) node(name)
                    .getMeshModels()
                    .get(0)
                    .getMeshPrimitiveModels()
                    .get(0)
                    .getMaterialModel();
            assertEquals(MaterialModelV2.AlphaMode.BLEND, paint.getAlphaMode(), name);
            assertTrue(paint.isDoubleSided(), name);
            assertTrue(paint.getBaseColorFactor()[3] < 1, name);
        }
    }

    @Test
    void aPanelWithADentHasItsOwnAreaAndNoMore() {
        Panel gable = enclosure.panels().stream()
                .filter(panel -> panel.id().equals("gable-mesh"))
                .findFirst()
                .orElseThrow();
        double areaM2 = 0;
        for (double[][] t : triangles(node("gable-mesh"))) {
            areaM2 += length(cross(minus(t[1], t[0]), minus(t[2], t[0]))) / 2;
        }
        // places are rounded to floats
        assertEquals(gable.facet().areaM2(), areaM2, 1e-4);
    }

    @Test
    @Tag("derived")
    void theGroundIsOpenWhereThereIsWaterAndWholeElsewhere() {
        double areaM2 = 0;
        for (double[][] t : triangles(node("ground"))) {
            areaM2 += cross(minus(t[1], t[0]), minus(t[2], t[0]))[1] / 2;
        }
        // in plan 24 by 16 m, less the moat of 3 by 15.6 m; places are rounded to floats
        assertEquals(24 * 16 - 3 * 15.6, areaM2, 1e-3);
    }

    @Test
    void allGroundLooksUp() {
        var normals = primitive(node("ground")).getAttributes().get("NORMAL").getAccessorData();
        for (int i = 0; i < normals.getNumElements(); i++) {
            assertTrue(((AccessorFloatData) normals).get(i, 1) > 0);
        }
    }

    @Test
    void movesAreLinesBetweenHoldsOneNodeForEachMode() {
        RouteGraph graph = habitat.graph();
        assertEquals(1 + habitat.bodies().size(), model.getSceneModels().size());
        assertMoves(model.getSceneModels().get(0).getNodeModels().get(1), habitat.bodies());
        for (int b = 0; b < habitat.bodies().size(); b++) {
            Body body = habitat.bodies().get(b);
            NodeModel moves = model.getSceneModels().get(b + 1).getNodeModels().get(1);
            assertEquals("moves of " + body.name(), moves.getName());
            assertMoves(moves, List.of(body));
        }
        assertTrue(graph.moveCount() > 100);
    }

    private static void assertMoves(NodeModel group, List<Body> bodies) {
        RouteGraph graph = habitat.graph();
        Map<String, StringBuilder> expected = new LinkedHashMap<>();
        for (LocomotorMode mode : LocomotorMode.values()) {
            for (int move = 0; move < graph.moveCount(); move++) {
                int m = move;
                if (graph.mode(move) == mode
                        && bodies.stream()
                                .anyMatch(body -> habitat.routes(body).costs().milliJ(m) != MoveCosts.IMPOSSIBLE)) {
                    expected.computeIfAbsent(mode.word(), word -> new StringBuilder())
                            .append(graph.from(move) + ">" + graph.to(move) + " ");
                }
            }
        }
        Map<String, StringBuilder> found = new LinkedHashMap<>();
        for (NodeModel mode : group.getChildren()) {
            MeshPrimitiveModel lines = primitive(mode);
            assertEquals(1, lines.getMode());
            var ends = lines.getIndices().getAccessorData().createByteBuffer().asIntBuffer();
            StringBuilder text = new StringBuilder();
            while (ends.hasRemaining()) {
                text.append(ends.get() + ">" + ends.get() + " ");
            }
            found.put(mode.getName(), text);
            var places =
                    (AccessorFloatData) lines.getAttributes().get("POSITION").getAccessorData();
            assertEquals(graph.holdCount(), places.getNumElements());
            for (int hold = 0; hold < graph.holdCount(); hold++) {
                assertEquals((float) graph.place(hold).xM(), places.get(hold, 0));
                assertEquals((float) graph.place(hold).zM(), places.get(hold, 1));
                assertEquals((float) -graph.place(hold).yM(), places.get(hold, 2), 0f);
            }
        }
        assertFalse(found.isEmpty());
        assertEquals(expected.toString(), found.toString());
    }

    private static void assertBox(String name, double[] least, double[] greatest, double slackM) {
        double[] low = {9e9, 9e9, 9e9};
        double[] high = {-9e9, -9e9, -9e9};
        for (MeshPrimitiveModel part : node(name).getMeshModels().get(0).getMeshPrimitiveModels()) {
            for (int axis = 0; axis < 3; axis++) {
                low[axis] = Math.min(
                        low[axis],
                        part.getAttributes().get("POSITION").getMin()[axis].doubleValue());
                high[axis] = Math.max(
                        high[axis],
                        part.getAttributes().get("POSITION").getMax()[axis].doubleValue());
            }
        }
        for (int axis = 0; axis < 3; axis++) {
            assertEquals(least[axis], low[axis], slackM, name);
            assertEquals(greatest[axis], high[axis], slackM, name);
        }
    }

    /** The divergence theorem: it holds only of a closed shape whose triangles all look outwards. */
    private static void assertVolume(double expectedM3, String name) {
        double volumeM3 = 0;
        for (double[][] t : triangles(node(name))) {
            double[] across = cross(t[1], t[2]);
            volumeM3 += (t[0][0] * across[0] + t[0][1] * across[1] + t[0][2] * across[2]) / 6;
        }
        // places are rounded to floats, in the worst case 1e-6 m at 24 m from the origin
        assertEquals(expectedM3, volumeM3, 1e-3 * expectedM3, name);
    }

    private static double[][][] triangles(NodeModel node) {
        MeshPrimitiveModel surface = primitive(node);
        assertEquals(4, surface.getMode());
        var indices = surface.getIndices().getAccessorData().createByteBuffer().asIntBuffer();
        var places = (AccessorFloatData) surface.getAttributes().get("POSITION").getAccessorData();
        double[][][] triangles = new double[indices.remaining() / 3][3][3];
        for (double[][] triangle : triangles) {
            for (double[] corner : triangle) {
                int index = indices.get();
                for (int axis = 0; axis < 3; axis++) {
                    corner[axis] = places.get(index, axis);
                }
            }
        }
        return triangles;
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }

    private static double length(double[] v) {
        return Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
    }

    private static MeshPrimitiveModel primitive(NodeModel node) {
        return node.getMeshModels().get(0).getMeshPrimitiveModels().get(0);
    }

    private static NodeModel node(String name) {
        return model.getNodeModels().stream()
                .filter(node -> node.getName().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Map<?, ?> extras(NodeModel node) {
        return (Map<?, ?>) node.getExtras();
    }

    private static List<String> ids(Stream<String> names) {
        return names.toList();
    }
}
