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
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class ClosePlacesTest {

    /** Just more than what makes two places one hold. */
    private static final double APART_M = 1.5e-6;

    /**
     * Pairs of places a little more than a micrometre apart divide a pole. From one to the other costs a juvenile less than
     * half a millijoule, so that most of these moves are rounded to nothing; the whole pole must cost the same.
     */
    @Test
    @Tag("derived")
    void placesAMicrometreApartDoNotMakeALineDearer() {
        Body body = BodyCatalogue.standard().find("juvenile").orElseThrow();
        int plainMilliJ = downMilliJ(body, 0);
        assertTrue(plainMilliJ > 100_000, plainMilliJ + " mJ");
        assertEquals(plainMilliJ, downMilliJ(body, 40));
    }

    private static int downMilliJ(Body body, int pairs) {
        Scene scene = Scene.yard(20, 20)
                .pole("pole", 5.3, 7.9, 6)
                .resource("high", ResourceKind.FOOD, new Point(5.3, 7.9, 5.5), "pole")
                .resource("low", ResourceKind.FOOD, new Point(5.3, 7.9, 0.5), "pole");
        for (int i = 0; i < pairs; i++) {
            double zM = 0.61 + 0.12 * i;
            scene.resource("a-" + i, ResourceKind.SHADE, new Point(5.3, 7.9, zM), "pole");
            scene.resource("b-" + i, ResourceKind.SHADE, new Point(5.3, 7.9, zM + APART_M), "pole");
        }
        RouteGraph graph = RouteGraph.compile(scene.build(), GraphSettings.forBodies(List.of(body)));
        Routes routes =
                new Routes(graph, MoveCosts.of(graph, body, EnergySettings.standard()), new ChoiceSharpness(22));
        int from = graph.useHolds(graph.resourceNumber("high"))[0];
        return routes.offGroundMilliJ(from, graph.resourceNumber("low"));
    }
}
