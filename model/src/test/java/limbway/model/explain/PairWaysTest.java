package limbway.model.explain;

import java.util.List;

import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.energy.EnergySettings;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;

class PairWaysTest {

    @Test
    void saysInEnglishThatThereIsNoWay() {
        Body body = BodyCatalogue.standard().find("adult female").orElseThrow();
        Scene scene =
                Scene.yard(12, 12).rock("wall", 4, -1, 6, 13).food("a", 1, 2, 0).food("b", 11, 2, 0);
        RouteGraph graph = RouteGraph.compile(scene.build(), GraphSettings.forBodies(List.of(body)));
        Routes routes = new Routes(
                graph, MoveCosts.of(graph, body, EnergySettings.standard()), ChoiceSharpness.GROUP.standard());
        assertEquals(
                new Search.Unreachable("no support, platform or ground leads this adult female from a to b"),
                PairWays.find(routes, ChoiceSharpness.GROUP.standard(), 0, 1));
    }
}
