package limbway.scenarios;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

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

import static org.junit.jupiter.api.Assertions.assertEquals;

/** The forest can be lived in: every body gets to every tree, pool and nest, one way or the other. */
class ForestExampleTest {

    @Test
    void everyBodyReachesEveryResource() {
        Study study = Examples.read("forest.yaml").study();
        RouteGraph graph = RouteGraph.compile(study.base().enclosure(), GraphSettings.forBodies(study.bodies()));
        int start = graph.useHolds(graph.resourceNumber("bank-north"))[0];
        List<String> cut = new ArrayList<>();
        for (Body body : study.bodies()) {
            Routes routes = new Routes(
                    graph, MoveCosts.of(graph, body, EnergySettings.standard()), ChoiceSharpness.GROUP.standard());
            for (Resource resource : graph.resources()) {
                if (routes.cheapestMilliJ(start, graph.resourceNumber(resource.id())) == ReverseTree.UNREACHABLE) {
                    cut.add(body.name() + " to " + resource.id());
                }
            }
        }
        assertEquals(List.of(), cut);
    }
}
