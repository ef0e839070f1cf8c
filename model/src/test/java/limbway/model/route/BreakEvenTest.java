package limbway.model.route;

import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.ResourceKind;
import limbway.model.energy.EnergySettings;
import limbway.model.energy.InclineCost;
import limbway.model.geometry.Point;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/**
 * Two ways between two masts: along a level rope that makes a detour of length L, or down, straight over the ground, and
 * up again. Closed form: the rope costs {@code 2 M C(0) L}, the ground {@code M [C(-90) h + C(0) d + C(90) h]}; both are
 * equal at {@code L* = [C(-90) h + C(0) d + C(90) h] / (2 C(0))}.
 */
@Tag("derived")
class BreakEvenTest {

    private static final double APART_M = 10;

    @ParameterizedTest
    @CsvSource({"flanged male, 3", "adult female, 4", "adult female, 2", "adolescent, 3.5", "juvenile, 5"})
    void theChoiceFlipsWhereBothWaysCostTheSame(String name, double heightM) {
        Body body = BodyCatalogue.standard().find(name).orElseThrow();
        double level = InclineCost.jPerKgM(body.massKg(), 0);
        double groundPerKg = InclineCost.jPerKgM(body.massKg(), -90) * heightM
                + level * APART_M
                + InclineCost.jPerKgM(body.massKg(), 90) * heightM;
        double breakEvenM = groundPerKg / (2 * level);

        Search.Reached at = ways(body, heightM, breakEvenM);
        // the largest miss is half a millijoule for each of the two straight pieces of either way
        assertEquals(
                1000 * groundPerKg * body.massKg(),
                (double) at.overGround().orElseThrow().milliJ(),
                3);
        assertEquals(
                1000 * groundPerKg * body.massKg(),
                (double) at.offGround().orElseThrow().milliJ(),
                3);
        // a miss of 6 mJ in more than 1e6 times theta / 4 is below 1e-4
        assertEquals(0.5, at.offGroundShare(), 1e-4);

        // a hundred-thousandth of the length is more than the rounding and less than anybody builds
        assertFalse(ways(body, heightM, breakEvenM * 0.99999).cheapest().usesGround());
        assertTrue(ways(body, heightM, breakEvenM * 1.00001).cheapest().usesGround());
    }

    @ParameterizedTest
    @CsvSource({"1.1, 0.1", "0.9, 0.925"})
    void aWayATenthDearerIsTakenOneTimeInTen(double lengthOverBreakEven, double share) {
        Body body = BodyCatalogue.standard().find("adult female").orElseThrow();
        double level = InclineCost.jPerKgM(body.massKg(), 0);
        double perHeight = InclineCost.jPerKgM(body.massKg(), -90) + InclineCost.jPerKgM(body.massKg(), 90);
        double breakEvenM = (4 * perHeight + APART_M * level) / (2 * level);
        // 1 / (1 + e^(22 * 0.1)) = 0.0998; and 1 / (1 + e^(-22 * 0.1 / 0.9)) = 0.920: allow the rounding of theta to 22
        assertEquals(share, ways(body, 4, breakEvenM * lengthOverBreakEven).offGroundShare(), 0.006);
    }

    private static Search.Reached ways(Body body, double heightM, double ropeM) {
        double sideM = Math.sqrt(ropeM * ropeM - APART_M * APART_M) / 2;
        Point start = new Point(5, 5, heightM);
        Point end = new Point(5 + APART_M, 5, heightM);
        Enclosure enclosure = Scene.yard(20, 200)
                .pole("mast-1", start.xM(), start.yM(), heightM)
                .pole("mast-2", end.xM(), end.yM(), heightM)
                .rope("rope", start, new Point(5 + APART_M / 2, 5 + sideM, heightM), end)
                .resource("from", ResourceKind.NEST, start, "mast-1")
                .resource("to", ResourceKind.FOOD, end, "mast-2")
                .build();
        RouteGraph graph = RouteGraph.compile(enclosure, GraphSettings.forBodies(List.of(body)));
        Routes routes = new Routes(
                graph, MoveCosts.of(graph, body, EnergySettings.standard()), ChoiceSharpness.GROUP.standard());
        return (Search.Reached) routes.find(graph.useHolds(0)[0], 1);
    }
}
