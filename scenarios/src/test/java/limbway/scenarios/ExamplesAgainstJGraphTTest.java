package limbway.scenarios;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import limbway.model.body.Body;
import limbway.model.energy.EnergySettings;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.scene.DijkstraReference;
import limbway.model.study.Study;
import limbway.model.study.Variant;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** Our trees on the bundled examples against Dijkstra's method in JGraphT: equal to the millijoule from every hold. */
class ExamplesAgainstJGraphTTest {

    @Test
    void everyLayoutBodyAndResourceOfTheYard() {
        Study study = Examples.read("yard.yaml").study();
        for (Variant layout : study.layouts()) {
            RouteGraph graph = RouteGraph.compile(layout.enclosure(), GraphSettings.forBodies(study.bodies()));
            for (Body body : study.bodies()) {
                compare(graph, body, 1, 0);
            }
        }
    }

    /** Every body, and every resource with one of the bodies, in each layout. */
    @ParameterizedTest
    @ValueSource(strings = {"moat-and-cage.yaml", "a-dozen-faults.yaml"})
    void everyLayoutAndBodyAmongMeshWallsAndDoors(String example) {
        Study study = Examples.read(example).study();
        for (Variant layout : study.layouts()) {
            RouteGraph graph = RouteGraph.compile(layout.enclosure(), GraphSettings.forBodies(study.bodies()));
            for (int b = 0; b < study.bodies().size(); b++) {
                compare(graph, study.bodies().get(b), study.bodies().size(), b);
            }
        }
    }

    /** Every body, and every resource with one of the bodies: JGraphT takes half a second for each tree of the forest. */
    @Test
    void everyBodyAndEveryResourceOfTheForest() {
        Study study = Examples.read("forest.yaml").study();
        List<Body> bodies = study.bodies();
        RouteGraph graph = RouteGraph.compile(study.base().enclosure(), GraphSettings.forBodies(bodies));
        for (int b = 0; b < bodies.size(); b++) {
            compare(graph, bodies.get(b), bodies.size(), b);
        }
    }

    private static void compare(RouteGraph graph, Body body, int step, int first) {
        MoveCosts costs = MoveCosts.of(graph, body, EnergySettings.standard());
        Routes routes = new Routes(graph, costs, ChoiceSharpness.GROUP.standard());
        DijkstraReference dijkstra = new DijkstraReference(graph, costs);
        for (int r = first; r < graph.resources().size(); r += step) {
            int[] cheapest = dijkstra.cheapest(graph.useHolds(r));
            int[] offGround = dijkstra.offGround(graph.useHolds(r));
            String what = body.name() + " to " + graph.resources().get(r).id();
            for (int hold = 0; hold < graph.holdCount(); hold++) {
                assertEquals(cheapest[hold], routes.cheapestMilliJ(hold, r), what);
                assertEquals(offGround[hold], routes.offGroundMilliJ(hold, r), what);
            }
        }
    }
}
