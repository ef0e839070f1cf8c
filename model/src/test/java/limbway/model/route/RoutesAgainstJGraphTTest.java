package limbway.model.route;

import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.energy.EnergySettings;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.scene.DijkstraReference;
import limbway.model.scene.FurnishedEnclosure;
import limbway.model.scene.RandomEnclosure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Our trees against Dijkstra's method in JGraphT, an independent solver, on random enclosures: equal to the millijoule. */
@Execution(ExecutionMode.CONCURRENT)
class RoutesAgainstJGraphTTest {

    private static final List<Body> BODIES = BodyCatalogue.standard().names().stream()
            .map(name -> BodyCatalogue.standard().find(name).orElseThrow())
            .toList();

    static IntStream seeds() {
        return Cases.seeds(60, 200);
    }

    static IntStream furnishedSeeds() {
        return Cases.seeds(200, 500);
    }

    static IntStream fewSeeds() {
        return Cases.seeds(20, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void costsAreEqual(int seed) {
        RouteGraph graph = RouteGraph.compile(RandomEnclosure.of(seed), GraphSettings.forBodies(BODIES));
        Body body = BODIES.get(seed % BODIES.size());
        MoveCosts costs = MoveCosts.of(graph, body, EnergySettings.standard());
        Routes routes = new Routes(graph, costs, ChoiceSharpness.GROUP.standard());
        DijkstraReference dijkstra = new DijkstraReference(graph, costs);
        for (int r = 0; r < graph.resources().size(); r++) {
            int[] reference = dijkstra.cheapest(graph.useHolds(r));
            int[] referenceOff = dijkstra.offGround(graph.useHolds(r));
            for (int hold = 0; hold < graph.holdCount(); hold++) {
                String where =
                        "RandomEnclosure.of(" + seed + "L), " + body.name() + ", hold " + hold + " to resource " + r;
                assertEquals(reference[hold], routes.cheapestMilliJ(hold, r), where);
                assertEquals(referenceOff[hold], routes.offGroundMilliJ(hold, r), where);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("furnishedSeeds")
    void costsAreEqualAmongEverySupportAndBarrierAtNoonOrAtNight(int seed) {
        Body body = BODIES.get(seed % BODIES.size());
        RouteGraph graph = RouteGraph.compile(FurnishedEnclosure.of(seed), GraphSettings.forBodies(List.of(body)));
        MoveCosts atNoon = MoveCosts.of(graph, body, EnergySettings.standard());
        MoveCosts costs = seed / BODIES.size() % 2 == 0 ? atNoon : atNoon.at(0);
        Routes routes = new Routes(graph, costs, ChoiceSharpness.GROUP.standard());
        DijkstraReference dijkstra = new DijkstraReference(graph, costs);
        int r = seed % graph.resources().size();
        int[] reference = dijkstra.cheapest(graph.useHolds(r));
        int[] referenceOff = dijkstra.offGround(graph.useHolds(r));
        for (int hold = 0; hold < graph.holdCount(); hold++) {
            String where = "FurnishedEnclosure.of(" + seed + "L), " + body.name() + ", hold " + hold;
            assertEquals(reference[hold], routes.cheapestMilliJ(hold, r), where);
            assertEquals(referenceOff[hold], routes.offGroundMilliJ(hold, r), where);
        }
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void aWayCostsWhatItsMovesCost(int seed) {
        RouteGraph graph = RouteGraph.compile(RandomEnclosure.of(seed), GraphSettings.forBodies(BODIES));
        MoveCosts costs = MoveCosts.of(graph, BODIES.get(seed % BODIES.size()), EnergySettings.standard());
        Routes routes = new Routes(graph, costs, ChoiceSharpness.GROUP.standard());
        for (int r = 0; r < graph.resources().size(); r++) {
            for (int hold = 0; hold < graph.holdCount(); hold += 7) {
                if (routes.find(hold, r) instanceof Search.Reached reached) {
                    assertEquals(
                            routes.cheapestMilliJ(hold, r), reached.cheapest().milliJ());
                    reached.offGround().ifPresent(way -> assertWhole(graph, costs, way, false));
                    reached.overGround().ifPresent(way -> assertWhole(graph, costs, way, true));
                }
            }
        }
    }

    private static void assertWhole(RouteGraph graph, MoveCosts costs, Way way, boolean usesGround) {
        long sum = 0;
        for (int i = 0; i < way.moves().size(); i++) {
            int move = way.moves().get(i);
            assertEquals(way.holds().get(i), graph.from(move));
            assertEquals(way.holds().get(i + 1), graph.to(move));
            sum += costs.milliJ(move);
        }
        assertEquals(sum, way.milliJ());
        assertEquals(usesGround, way.usesGround());
        assertTrue(way.offGroundM() <= way.lengthM() + 1e-9);
    }
}
