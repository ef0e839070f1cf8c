package limbway.model.graph;

import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

@Tag("derived")
class GroundWaysTest {

    private static final Body FEMALE =
            BodyCatalogue.standard().find("adult female").orElseThrow();

    // sums of a few square roots, so only rounding in the last digits may differ
    private static final double ROUNDING_M = 1e-9;

    @Test
    void walksStraightWhereNothingStandsInTheWay() {
        Scene scene = Scene.yard(20, 20).food("a", 1, 1, 0).food("b", 13, 6, 0);
        assertEquals(13, walkedM(scene), ROUNDING_M);
    }

    /** Over a rock from (0, 4) by its corners (8, 8) and (12, 8) to (16, 4): sqrt(64 + 16) + 4 + sqrt(16 + 16). */
    @Test
    void turnsExactlyAtTheCornersOfARock() {
        Scene scene =
                Scene.yard(20, 20).rock("rock", 8, 0, 12, 8).food("a", 0, 4, 0).food("b", 16, 4, 0);
        assertEquals(Math.sqrt(80) + 4 + Math.sqrt(32), walkedM(scene), ROUNDING_M);
    }

    /** Two rocks that share an edge leave no slit: the way goes round both, by (4, 6) and (8, 6). */
    @Test
    void doesNotSlipBetweenRocksThatTouch() {
        Scene scene = Scene.yard(12, 12)
                .rock("one", 4, 0, 6, 6)
                .rock("two", 6, 0, 8, 6)
                .food("a", 1, 2, 0)
                .food("b", 11, 2, 0);
        assertEquals(5 + 4 + 5, walkedM(scene), ROUNDING_M);
    }

    /** An L-shaped yard: from one arm to the other by the inner corner (4, 4), twice sqrt(36 + 1). */
    @Test
    void turnsAtTheInnerCornerOfTheYard() {
        Outline yard = new Outline(List.of(
                new Corner(0, 0),
                new Corner(12, 0),
                new Corner(12, 4),
                new Corner(4, 4),
                new Corner(4, 12),
                new Corner(0, 12)));
        Scene scene = Scene.on(yard).food("a", 10, 3, 0).food("b", 3, 10, 0);
        assertEquals(2 * Math.sqrt(37), walkedM(scene), ROUNDING_M);
    }

    @Test
    void findsNoWayThroughAWallOfRocks() {
        Scene scene =
                Scene.yard(12, 12).rock("wall", 4, -1, 6, 13).food("a", 1, 2, 0).food("b", 11, 2, 0);
        var refused = assertInstanceOf(Search.Unreachable.class, search(scene));
        assertEquals("no support, platform or ground leads this adult female from ground to b", refused.why());
    }

    private static double walkedM(Scene scene) {
        return assertInstanceOf(Search.Reached.class, search(scene)).cheapest().lengthM();
    }

    private static Search search(Scene scene) {
        RouteGraph graph = RouteGraph.compile(scene.build(), GraphSettings.forBodies(List.of(FEMALE)));
        Routes routes = new Routes(
                graph, MoveCosts.of(graph, FEMALE, EnergySettings.standard()), ChoiceSharpness.GROUP.standard());
        return routes.find(graph.useHolds(0)[0], 1);
    }
}
