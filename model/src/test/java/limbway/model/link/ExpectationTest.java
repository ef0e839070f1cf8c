package limbway.model.link;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.ResourceKind;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Point;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.ReverseTree;
import limbway.model.route.Routes;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Two places on one pole: a way over the ground goes down it and up again, so that it is no rival. */
class ExpectationTest {

    private static final Body FEMALE =
            BodyCatalogue.standard().find("adult female").orElseThrow();

    private static Expectation expectation;
    private static WayCosts up;
    private static WayCosts down;

    @BeforeAll
    static void build() {
        RouteGraph graph = RouteGraph.compile(
                Scene.yard(12, 12)
                        .pole("mast", 6, 6, 6)
                        .resource("nest", ResourceKind.NEST, new Point(6, 6, 2.5), "mast")
                        .resource("tray", ResourceKind.FOOD, new Point(6, 6, 5.5), "mast")
                        .build(),
                GraphSettings.forBodies(List.of(FEMALE)));
        Routes routes =
                new Routes(graph, MoveCosts.of(graph, FEMALE, EnergySettings.standard()), new ChoiceSharpness(22));
        int nest = graph.useHolds(0)[0];
        int tray = graph.useHolds(1)[0];
        expectation = new Expectation(
                List.of(new Errand(FEMALE, nest, 1, 2, 10), new Errand(FEMALE, tray, 0, 5, 30)),
                Map.of(FEMALE, routes),
                new ChoiceSharpness(22));
        up = new WayCosts(routes.offGroundMilliJ(nest, 1), routes.overGroundMilliJ(nest, 1));
        down = new WayCosts(routes.offGroundMilliJ(tray, 0), routes.overGroundMilliJ(tray, 0));
        assertTrue(up.overMilliJ() > up.offMilliJ() && up.offMilliJ() > 0, up.toString());
    }

    @Test
    @Tag("derived")
    void aFallThatMakesTheWayOffTheGroundTheDearerOneCostsItsShare() {
        // a tenth dearer than the ground: 1/(1 + exp(22 * 0.1)) = 1/(1 + 9.0250135) = 0.0997505 of 2 trips and 10 of 40
        // m
        Gain gain = expectation.gain(List.of(new WayCosts(1100, 1000), down));
        assertEquals((0.0997505 - 1) * 10 / 40, gain.offGroundShare(), 1e-7);
        assertEquals((0.0997505 - 1) * 2, gain.flippedTripsPerDay(), 1e-7);
    }

    @Test
    @Tag("derived")
    void aFallThatLeavesNoWayOffTheGroundCostsAll() {
        Gain gain = expectation.gain(List.of(new WayCosts(ReverseTree.UNREACHABLE, 1000), down));
        assertEquals(-10.0 / 40, gain.offGroundShare(), 1e-12);
        assertEquals(-2, gain.flippedTripsPerDay(), 1e-12);
    }

    @Test
    void aWayThatStaysTheCheaperOneOrBecomesCheaperLosesNothing() {
        assertEquals(new Gain(0, 0), expectation.gain(List.of(up, down)));
        assertEquals(new Gain(0, 0), expectation.gain(List.of(new WayCosts(1000, 1100), down)));
        assertEquals(
                new Gain(0, 0), expectation.gain(List.of(new WayCosts(up.offMilliJ() / 2, up.overMilliJ()), down)));
    }
}
