package limbway.model.graph;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Bounds;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Ground;
import limbway.model.enclosure.HotWire;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.PanelKind;
import limbway.model.enclosure.ResourceKind;
import limbway.model.energy.EnergySettings;
import limbway.model.energy.ModeCost;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.geometry.Terrain;
import limbway.model.geometry.Triangle;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Climbing on mesh: up, over a free edge, never through; and what live wire takes away. */
class PanelWaysTest {

    private static final Body FEMALE =
            BodyCatalogue.standard().find("adult female").orElseThrow();

    private static Panel mesh(String id, double openingM, Point... corners) {
        return new Panel(id, PanelKind.MESH, new Facet(List.of(corners)), openingM, 0.004, OptionalDouble.empty());
    }

    private static Panel wall(String id, double x0, double y0, double x1, double y1, double topZM) {
        return mesh(
                id,
                0.05,
                new Point(x0, y0, 0),
                new Point(x1, y1, 0),
                new Point(x1, y1, topZM),
                new Point(x0, y0, topZM));
    }

    /** A box of 6 m by 4 m, 3 m high, in the middle of the yard, food without, nest within. */
    private static List<Panel> box(boolean closed) {
        List<Panel> panels = new ArrayList<>(List.of(
                wall("south", 7, 3, 13, 3, 3),
                wall("east", 13, 3, 13, 7, 3),
                wall("north", 13, 7, 7, 7, 3),
                wall("west", 7, 7, 7, 3, 3)));
        if (closed) {
            panels.add(mesh(
                    "roof", 0.05, new Point(7, 3, 3), new Point(13, 3, 3), new Point(13, 7, 3), new Point(7, 7, 3)));
        }
        return panels;
    }

    private static Search search(Enclosure enclosure, Body body) {
        RouteGraph graph = RouteGraph.compile(enclosure, GraphSettings.forBodies(List.of(body)));
        Routes routes = new Routes(
                graph, MoveCosts.of(graph, body, EnergySettings.standard()), ChoiceSharpness.GROUP.standard());
        return routes.find(graph.useHolds(0)[0], 1);
    }

    private static Scene yard(double foodX) {
        return Scene.yard(20, 10)
                .resource("nest", ResourceKind.NEST, new Point(10, 5, 0), "")
                .resource("food", ResourceKind.FOOD, new Point(foodX, 5, 0), "");
    }

    @ParameterizedTest
    @ValueSource(strings = {"flanged male", "adult female", "juvenile", "white-handed gibbon", "male chimpanzee"})
    void aClosedCageIsNotLeftAndAnOpenOneIsLeftOverTheWall(String name) {
        Body body = BodyCatalogue.standard().find(name).orElseThrow();
        Enclosure bare = yard(17).build();
        assertInstanceOf(Search.Unreachable.class, search(bare.withPanels(box(true)), body));
        Search.Reached over = assertInstanceOf(Search.Reached.class, search(bare.withPanels(box(false)), body));
        double upJ = 3 * new ModeCost(EnergySettings.standard()).jPerM(body, LocomotorMode.VERTICAL_CLIMB, 90);
        // up 3 m of mesh but for the hand's breadths at its foot and edge, and then down the other side
        assertTrue(
                over.cheapest().milliJ() / 1000.0 > 0.95 * upJ, over.cheapest().milliJ() + " mJ");
    }

    @Test
    void throughAMeshTooFineForFingersNobodyClimbs() {
        List<Panel> fine = new ArrayList<>();
        for (Panel panel : box(false)) {
            fine.add(mesh(panel.id(), 0.012, panel.corners().toArray(Point[]::new)));
        }
        assertInstanceOf(Search.Unreachable.class, search(yard(17).build().withPanels(fine), FEMALE));
    }

    @Test
    void onAWallOfMeshHeightAndLevelWayArePaidApart() {
        Enclosure enclosure = Scene.yard(20, 10)
                .resource("low", ResourceKind.NEST, new Point(6, 5, 1), "mesh")
                .resource("high", ResourceKind.FOOD, new Point(10, 5, 3), "mesh")
                .build()
                .withPanels(List.of(wall("mesh", 5, 5, 12, 5, 4)));
        Search.Reached reached = assertInstanceOf(Search.Reached.class, search(enclosure, FEMALE));
        ModeCost cost = new ModeCost(EnergySettings.standard());
        double expectedJ = 4 * cost.throughBranchesJPerM(FEMALE, 0) + 2 * cost.throughBranchesJPerM(FEMALE, 90);
        assertEquals(expectedJ, reached.offGround().orElseThrow().milliJ() / 1000.0, 0.01);
    }

    @Test
    void aStrandAlongTheTopOfTheWallShutsTheWayOver() {
        List<HotWire> strands = new ArrayList<>();
        double[][] corners = {{7, 3}, {13, 3}, {13, 7}, {7, 7}, {7, 3}};
        for (int i = 0; i < 4; i++) {
            Point from = new Point(corners[i][0], corners[i][1], 3.1);
            Point to = new Point(corners[i + 1][0], corners[i + 1][1], 3.1);
            strands.add(new HotWire.Strand("strand-" + i, Polyline.straight(from, to), 0.4));
        }
        Enclosure wired = yard(17).build().withPanels(box(false)).withBounds(new Bounds(List.of(), strands, List.of()));
        assertInstanceOf(Search.Unreachable.class, search(wired, FEMALE));
    }

    /** The sides of the cage cross the plane of the partition, the beam and the deck lie across it: none is a way through. */
    @ParameterizedTest
    @ValueSource(strings = {"nothing", "a beam", "a deck"})
    void whatCrossesAMeshLeadsNobodyThroughIt(String across) {
        List<Panel> panels = new ArrayList<>(box(true));
        panels.add(wall("partition", 11.5, 3, 11.5, 7, 3));
        Scene scene = Scene.yard(20, 10)
                .resource("nest", ResourceKind.NEST, new Point(10, 5, 0), "")
                .resource("food", ResourceKind.FOOD, new Point(12.5, 5, 0), "");
        if (across.equals("a beam")) {
            scene.beam("beam", 0.06, new Point(9, 4, 1), new Point(12.5, 4, 1));
        } else if (across.equals("a deck")) {
            scene.deck("deck", 11, 4, 12, 5, 1);
        }
        Enclosure enclosure = scene.build();
        assertInstanceOf(Search.Reached.class, search(enclosure, FEMALE));
        assertInstanceOf(Search.Unreachable.class, search(enclosure.withPanels(panels), FEMALE));
    }

    @Test
    void aDividerFromEdgeToEdgeIsClimbedOverAndNotWalkedRound() {
        Enclosure divided = yard(17).build().withPanels(List.of(wall("divider", 14, 0, 14, 10, 4)));
        Search.Reached over = assertInstanceOf(Search.Reached.class, search(divided, FEMALE));
        double upJ = 4 * new ModeCost(EnergySettings.standard()).jPerM(FEMALE, LocomotorMode.VERTICAL_CLIMB, 90);
        assertTrue(
                over.cheapest().milliJ() / 1000.0 > 0.95 * upJ, over.cheapest().milliJ() + " mJ");
    }

    /** The sheet rises 1 in 4 northwards, so that the mesh stands on ground 1.25 m up. */
    @Test
    void aMeshOnASlopeIsJoinedToTheGround() {
        Terrain slope = new Terrain(List.of(
                new Triangle(new Point(0, 0, 0), new Point(20, 0, 0), new Point(20, 10, 2.5)),
                new Triangle(new Point(0, 0, 0), new Point(20, 10, 2.5), new Point(0, 10, 2.5))));
        Enclosure level = Scene.yard(20, 10)
                .resource("nest", ResourceKind.NEST, new Point(3, 4, 1), "")
                .resource("food", ResourceKind.FOOD, new Point(10, 5, 4), "mesh")
                .build();
        Enclosure hill = new Enclosure(
                level.site(),
                new Ground(level.ground().outline(), "grass", List.of(), slope),
                List.of(),
                List.of(),
                List.of(),
                List.of(mesh(
                        "mesh",
                        0.05,
                        new Point(6, 5, 1.25),
                        new Point(14, 5, 1.25),
                        new Point(14, 5, 5),
                        new Point(6, 5, 5))),
                Bounds.NONE,
                level.shading(),
                level.resources());
        assertInstanceOf(Search.Reached.class, search(hill, FEMALE));
    }
}
