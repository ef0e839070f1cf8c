package limbway.model.route;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Enclosure;
import limbway.model.energy.EnergySettings;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.scene.FurnishedEnclosure;

import static org.junit.jupiter.api.Assertions.assertTrue;

/** What stops an animal never makes a way cheaper: no tolerance. */
@Execution(ExecutionMode.CONCURRENT)
class ClosedWaysTest {

    private static final List<Body> BODIES = BodyCatalogue.standard().names().stream()
            .map(name -> BodyCatalogue.standard().find(name).orElseThrow())
            .toList();

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void costsNeverFallWhenSomethingIsClosed(int seed) {
        Enclosure open = FurnishedEnclosure.of(seed);
        Body body = BODIES.get(seed % BODIES.size());
        int[][] before = costs(open, body, NOON);
        int[][] after = costs(FurnishedEnclosure.moreClosed(open, seed), body, NOON);
        int[][] atNight = costs(open, body, 0);
        for (int i = 0; i < before.length; i++) {
            for (int k = 0; k < 2; k++) {
                assertTrue(after[i][k] >= before[i][k], "pair " + i + ": " + before[i][k] + " then " + after[i][k]);
                assertTrue(atNight[i][k] >= before[i][k], "pair " + i + " with the door shut");
            }
        }
    }

    @Test
    void everyModeIsUsedAndSomeWaysAreReallyClosed() {
        Map<LocomotorMode, Integer> used = new EnumMap<>(LocomotorMode.class);
        int dearer = 0;
        for (int seed = 1; seed <= 60; seed++) {
            Enclosure open = FurnishedEnclosure.of(seed);
            Body body = BODIES.get(seed % BODIES.size());
            RouteGraph graph = RouteGraph.compile(open, GraphSettings.forBodies(List.of(body)));
            MoveCosts costs = MoveCosts.of(graph, body, EnergySettings.standard());
            for (int m = 0; m < graph.moveCount(); m++) {
                if (costs.milliJ(m) != MoveCosts.IMPOSSIBLE) {
                    used.merge(graph.mode(m), 1, Integer::sum);
                }
            }
            int[][] before = costs(open, body, NOON);
            int[][] after = costs(FurnishedEnclosure.moreClosed(open, seed), body, NOON);
            for (int i = 0; i < before.length; i++) {
                dearer += after[i][0] > before[i][0] || after[i][1] > before[i][1] ? 1 : 0;
            }
        }
        assertTrue(used.keySet().containsAll(List.of(LocomotorMode.values())), "modes used: " + used);
        assertTrue(dearer > 20, "only " + dearer + " pairs are dearer: nothing is closed");
    }

    private static final int NOON = 12 * 3600;

    /** Least cost of any way and of one off the ground, for each pair of resources. */
    private static int[][] costs(Enclosure enclosure, Body body, int secondOfDay) {
        RouteGraph graph = RouteGraph.compile(enclosure, GraphSettings.forBodies(List.of(body)));
        MoveCosts costs = MoveCosts.of(graph, body, EnergySettings.standard()).at(secondOfDay);
        Routes routes = new Routes(graph, costs, ChoiceSharpness.GROUP.standard());
        int n = graph.resources().size();
        int[][] least = new int[n * n][2];
        for (int i = 0; i < n * n; i++) {
            least[i][0] = ReverseTree.UNREACHABLE;
            least[i][1] = ReverseTree.UNREACHABLE;
            for (int hold : graph.useHolds(i / n)) {
                least[i][0] = Math.min(least[i][0], routes.cheapestMilliJ(hold, i % n));
                least[i][1] = Math.min(least[i][1], routes.offGroundMilliJ(hold, i % n));
            }
        }
        return least;
    }
}
