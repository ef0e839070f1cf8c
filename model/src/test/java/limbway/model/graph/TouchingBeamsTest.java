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

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

@Tag("derived")
class TouchingBeamsTest {

    private static final Body FEMALE =
            BodyCatalogue.standard().find("adult female").orElseThrow();

    // sums of a few lengths, so only rounding in the last digits may differ
    private static final double ROUNDING_M = 1e-9;

    /** Two broad beams that touch side by side: a female walks on both and grips neither. */
    @Test
    void walksFromABroadBeamToOneThatTouchesIt() {
        Scene scene = Scene.yard(20, 20)
                .beam("a", 0.32, new Point(4, 10, 3), new Point(12, 10, 3))
                .beam("b", 0.32, new Point(12, 10.32, 3), new Point(18, 10.32, 3))
                .resource("food", ResourceKind.FOOD, new Point(12, 10, 3), "a")
                .resource("nest", ResourceKind.NEST, new Point(12, 10.32, 3), "b");
        assertEquals(0.32, offGroundM(scene), ROUNDING_M);
    }

    private static double offGroundM(Scene scene) {
        return assertInstanceOf(Search.Reached.class, search(scene))
                .offGround()
                .orElseThrow()
                .lengthM();
    }

    private static Search search(Scene scene) {
        RouteGraph graph = RouteGraph.compile(scene.build(), GraphSettings.forBodies(List.of(FEMALE)));
        Routes routes = new Routes(
                graph, MoveCosts.of(graph, FEMALE, EnergySettings.standard()), ChoiceSharpness.GROUP.standard());
        return routes.find(graph.useHolds(1)[0], 0);
    }
}
