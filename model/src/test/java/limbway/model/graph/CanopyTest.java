package limbway.model.graph;

import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

class CanopyTest {

    private static final Body FEMALE =
            BodyCatalogue.standard().find("adult female").orElseThrow();

    /** Two crowns of 2 m radius, 5.4 m apart: 1.4 m of air, and a female reaches 1.5 m. */
    @Test
    @Tag("derived")
    void crossesFromCrownToCrownWithinReach() {
        Search.Reached ways = assertInstanceOf(Search.Reached.class, search(5.4, 0.3));
        // from axis to edge, over the gap, and from edge to axis: in all the distance of the trees
        assertEquals(5.4, ways.offGround().orElseThrow().lengthM(), 1e-9);
    }

    @Test
    void comesDownWhereTheGapIsTooWide() {
        Search.Reached ways = assertInstanceOf(Search.Reached.class, search(5.6, 0.3));
        assertTrue(ways.offGround().isEmpty());
        assertTrue(ways.cheapest().usesGround());
    }

    /** A stem of 1 m is too thick to hug, but its crown is still reached from the neighbour's. */
    @Test
    void reachesATreeTooThickToClimbByItsNeighbour() {
        assertTrue(assertInstanceOf(Search.Reached.class, search(5.4, 1.0))
                .offGround()
                .isPresent());
        assertInstanceOf(Search.Unreachable.class, search(5.6, 1.0));
    }

    /** The rope ends 1.4 m short of the branches of a tree that nobody can hug: a female reaches over. */
    @Test
    void reachesTheBranchesFromARopeThatEndsShortOfThem() {
        assertTrue(arrives(Scene.yard(30, 10)
                .rope("way", new Point(8.4, 5, 7), new Point(12, 5, 7))
                .resource("nest", ResourceKind.NEST, new Point(12, 5, 7), "way")));
        assertFalse(arrives(Scene.yard(30, 10)
                .rope("way", new Point(8.6, 5, 7), new Point(12, 5, 7))
                .resource("nest", ResourceKind.NEST, new Point(12, 5, 7), "way")));
    }

    @Test
    void reachesTheBranchesFromAPoleBesideThem() {
        assertTrue(arrives(Scene.yard(30, 10)
                .pole("way", 8, 5, 8)
                .resource("nest", ResourceKind.NEST, new Point(8, 5, 7), "way")));
    }

    @Test
    void reachesTheBranchesFromADeckBesideUnderOrAmongThem() {
        assertTrue(arrives(deck(7.5, 3, 10, 7, 7)));
        assertFalse(arrives(deck(8.6, 3, 10, 7, 7)));
        assertTrue(arrives(deck(0, 0, 10, 10, 5)));
        assertTrue(arrives(deck(6, 4.5, 6.5, 5.5, 8)));
    }

    private static Scene deck(double x0, double y0, double x1, double y1, double zM) {
        return Scene.yard(30, 10)
                .deck("way", x0, y0, x1, y1, zM)
                .resource("nest", ResourceKind.NEST, new Point(x1, y1, zM), "way");
    }

    /** Whether a female comes off the ground from the nest to fruit in a tree whose trunk is too thick for her. */
    private static boolean arrives(Scene scene) {
        Enclosure bare = scene.add(trunk("tree-1", 5, 1.0))
                .resource("fruit", ResourceKind.FOOD, new Point(5, 5, 9), "")
                .build();
        Enclosure enclosure = new Enclosure(
                bare.site(),
                bare.ground(),
                bare.supports(),
                bare.platforms(),
                List.of(crown("tree-1", 5)),
                bare.resources());
        return search(enclosure) instanceof Search.Reached ways
                && ways.offGround().isPresent();
    }

    private static Search search(double apartM, double secondDiameterM) {
        Enclosure trunks = Scene.yard(30, 10)
                .add(trunk("tree-1", 5, 0.3))
                .add(trunk("tree-2", 5 + apartM, secondDiameterM))
                .resource("nest", ResourceKind.NEST, new Point(5, 5, 8), "tree-1")
                .resource("fruit", ResourceKind.FOOD, new Point(5 + apartM, 5, 8), "tree-2")
                .build();
        Enclosure enclosure = new Enclosure(
                trunks.site(),
                trunks.ground(),
                trunks.supports(),
                List.of(),
                List.of(crown("tree-1", 5), crown("tree-2", 5 + apartM)),
                trunks.resources());
        return search(enclosure);
    }

    private static Search search(Enclosure enclosure) {
        RouteGraph graph = RouteGraph.compile(enclosure, GraphSettings.forBodies(List.of(FEMALE)));
        Routes routes = new Routes(
                graph, MoveCosts.of(graph, FEMALE, EnergySettings.standard()), ChoiceSharpness.GROUP.standard());
        return routes.find(graph.useHolds(0)[0], 1);
    }

    private static Support trunk(String id, double x, double diameterM) {
        Polyline axis = Polyline.straight(new Point(x, 5, 0), new Point(x, 5, 10));
        return new Support(id, SupportKind.TRUNK, axis, diameterM, Material.BARK);
    }

    private static Crown crown(String trunk, double x) {
        return new Crown(trunk + "-crown", trunk, new Point(x, 5, 0), 2, 6, 10);
    }
}
