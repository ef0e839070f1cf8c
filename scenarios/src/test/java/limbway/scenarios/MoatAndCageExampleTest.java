package limbway.scenarios;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

import limbway.model.body.Body;
import limbway.model.enclosure.Resource;
import limbway.model.energy.EnergySettings;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.ReverseTree;
import limbway.model.route.Routes;
import limbway.model.study.Study;
import limbway.model.study.Variant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

/** The yard and the cage can both be lived in; they differ in what stops and in what is climbed. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS) // so that each graph is compiled once
class MoatAndCageExampleTest {

    private final Study study = Examples.read("moat-and-cage.yaml").study();
    private final RouteGraph yard = graph(study.base());
    private final RouteGraph cage = graph(study.find("mesh cage").orElseThrow());

    private RouteGraph graph(Variant layout) {
        return RouteGraph.compile(layout.enclosure(), GraphSettings.forBodies(study.bodies()));
    }

    private static Routes routes(RouteGraph graph, Body body) {
        return new Routes(
                graph, MoveCosts.of(graph, body, EnergySettings.standard()), ChoiceSharpness.GROUP.standard());
    }

    @Test
    void everyBodyReachesEveryResourceInBoth() {
        for (RouteGraph graph : List.of(yard, cage)) {
            for (Body body : study.bodies()) {
                Routes routes = routes(graph, body);
                int start = graph.useHolds(graph.resourceNumber("nest-1"))[0];
                for (Resource resource : graph.resources()) {
                    assertNotEquals(
                            ReverseTree.UNREACHABLE,
                            routes.cheapestMilliJ(start, graph.resourceNumber(resource.id())),
                            body.name() + " to " + resource.id());
                }
            }
        }
    }

    @Test
    void onlyInTheCageIsTheHatchReachedAloft() {
        for (Body body : study.bodies()) {
            assertEquals(ReverseTree.UNREACHABLE, hatchAloft(yard, body), body.name());
            assertNotEquals(ReverseTree.UNREACHABLE, hatchAloft(cage, body), body.name());
        }
    }

    private static int hatchAloft(RouteGraph graph, Body body) {
        int start = graph.useHolds(graph.resourceNumber("nest-1"))[0];
        return routes(graph, body).offGroundMilliJ(start, graph.resourceNumber("hatch"));
    }

    @Test
    void animalsFeedersAndFrameAreTheSame() {
        Variant meshed = study.find("mesh cage").orElseThrow();
        assertEquals(study.base().feedings(), meshed.feedings());
        assertEquals(study.base().enclosure().supports(), meshed.enclosure().supports());
        assertEquals(study.base().enclosure().resources(), meshed.enclosure().resources());
        assertEquals(5, meshed.enclosure().panels().size());
        assertEquals(List.of(), meshed.enclosure().bounds().barriers());
    }
}
