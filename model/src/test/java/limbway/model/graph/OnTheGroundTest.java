package limbway.model.graph;

import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.ResourceKind;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Point;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

@Tag("derived")
class OnTheGroundTest {

    private static final Body FEMALE =
            BodyCatalogue.standard().find("adult female").orElseThrow();

    /** A rope that lies on the ground is no way off it. */
    @Test
    void whatLiesOnTheGroundIsOnTheGround() {
        Scene scene = Scene.yard(20, 20)
                .rope("rope", new Point(4, 10, 0), new Point(12, 10, 0))
                .resource("food", ResourceKind.FOOD, new Point(4, 10, 0), "rope")
                .resource("nest", ResourceKind.NEST, new Point(12, 10, 0), "rope");
        Search.Reached ways = assertInstanceOf(Search.Reached.class, search(scene));
        assertTrue(ways.offGround().isEmpty());
    }

    private static Search search(Scene scene) {
        RouteGraph graph = RouteGraph.compile(scene.build(), GraphSettings.forBodies(List.of(FEMALE)));
        Routes routes = new Routes(
                graph, MoveCosts.of(graph, FEMALE, EnergySettings.standard()), ChoiceSharpness.GROUP.standard());
        return routes.find(graph.useHolds(1)[0], 0);
    }
}
