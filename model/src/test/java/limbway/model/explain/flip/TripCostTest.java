package limbway.model.explain.flip;

import java.util.List;

import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.energy.EnergySettings;
import limbway.model.explain.PairWays;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.ReverseTree;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.model.scene.RandomEnclosure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class TripCostTest {

    private static final Body FEMALE =
            BodyCatalogue.standard().find("adult female").orElseThrow();

    private static final ChoiceSharpness SHARPNESS = ChoiceSharpness.GROUP.standard();

    /** Cheapest ways with a move on the ground may come back to where they were; nobody takes those. */
    @Test
    void aTripCostsWhatItCostsWhenItIsTravelled() {
        int loops = 0;
        for (long seed = 1; seed <= 6; seed++) {
            RouteGraph graph = RouteGraph.compile(RandomEnclosure.of(seed), GraphSettings.forBodies(List.of(FEMALE)));
            MoveCosts costs = MoveCosts.of(graph, FEMALE, EnergySettings.standard());
            Routes routes = new Routes(graph, costs, SHARPNESS);
            for (int from = 0; from < graph.resources().size(); from++) {
                for (int to = 0; to < graph.resources().size(); to++) {
                    if (from == to) {
                        continue;
                    }
                    TripCost cost = TripCost.of(graph, costs, SHARPNESS, from, to);
                    String where = "seed " + seed + " from " + from + " to " + to;
                    if (PairWays.find(routes, SHARPNESS, from, to) instanceof Search.Reached ways) {
                        assertEquals(ways.offGroundShare(), cost.share(SHARPNESS), where);
                        assertEquals(ways.cheapest().milliJ(), cost.cheapestMilliJ(), where);
                        loops += cheapestOverGround(routes, from, to) < cost.overGroundMilliJ() ? 1 : 0;
                    } else {
                        assertEquals(ReverseTree.UNREACHABLE, cost.cheapestMilliJ(), where);
                    }
                }
            }
        }
        assertTrue(loops > 0, "no way with a loop was met");
    }

    private static int cheapestOverGround(Routes routes, int from, int to) {
        int least = ReverseTree.UNREACHABLE;
        for (int hold : routes.graph().useHolds(from)) {
            least = Math.min(least, routes.overGroundMilliJ(hold, to));
        }
        return least;
    }
}
