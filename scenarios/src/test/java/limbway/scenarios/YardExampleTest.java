package limbway.scenarios;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

import limbway.model.body.Body;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.ReverseTree;
import limbway.model.route.Routes;
import limbway.model.study.Feeding;
import limbway.model.study.Study;
import limbway.model.study.Variant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** The demo yard shows what its variants claim, asked of the route graph itself. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS) // so that each graph is compiled once
class YardExampleTest {

    private final Map<String, RouteGraph> graphs = new LinkedHashMap<>();
    private final Study study = Examples.read("yard.yaml").study();

    @Test
    void everyVariantIsThereUnderItsName() {
        assertEquals(
                List.of("as drawn", "high and linked", "one link missing", "long way round"),
                study.layouts().stream().map(Variant::name).toList());
    }

    @Test
    void highAndLinkedJoinsEveryStationAloftForEveryBody() {
        for (Body body : study.bodies()) {
            assertEquals(List.of(), unreachableAloft("high and linked", body), body.name());
        }
    }

    @Test
    void oneLinkMissingCutsTheFirstDeckOffForEveryBody() {
        for (Body body : study.bodies()) {
            List<String> cut = unreachableAloft("one link missing", body);
            assertTrue(cut.contains("hatch to tray") && cut.contains("tray to hatch"), body.name() + ": " + cut);
            assertFalse(cut.contains("hatch to trough"), body.name() + ": " + cut);
        }
    }

    @Test
    void theMissingLinkLeavesAGapOfTwoToThreeMetres() {
        Variant variant = study.find("one link missing").orElseThrow();
        Point end = variant.enclosure().supports().stream()
                .filter(support -> support.id().equals("rope-12"))
                .findFirst()
                .orElseThrow()
                .axis()
                .start();
        double eastEdgeM = 6;
        double gapM = end.distanceM(new Point(eastEdgeM, end.yM(), 5));
        assertTrue(gapM > 2 && gapM < 3, () -> "gap of " + gapM + " m");
    }

    @Test
    void theLongWayRoundIsOpenToEveryBodyAndDearerThanTheGround() {
        for (Body body : study.bodies()) {
            assertEquals(List.of(), unreachableAloft("long way round", body), body.name());
            Routes routes = routes("long way round", body);
            int hatch = routes.graph().resourceNumber("hatch");
            int tray = routes.graph().useHolds(routes.graph().resourceNumber("tray"))[0];
            long aloft = routes.offGroundMilliJ(tray, hatch);
            long least = routes.cheapestMilliJ(tray, hatch);
            assertTrue(aloft > 1.5 * least, () -> body.name() + ": " + aloft + " and " + least + " mJ");
        }
    }

    /** 1600 (M/54.4)^0.304 kcal a day, 4.184 kJ each: 7371, 2 x 5872, 5603, 4538 kJ, together 29256 kJ. */
    @Test
    @Tag("derived")
    void theKeepersPutOutWhatTheGroupSpends() {
        double spentKj = 0;
        for (double massKg : new double[] {74, 35, 35, 30, 15}) {
            spentKj += 4.184 * 1600 * Math.pow(massKg / 54.4, 0.304);
        }
        for (Variant layout : study.layouts()) {
            double fedKj =
                    layout.feedings().stream().mapToDouble(Feeding::energyKj).sum();
            // within 5 %, so that nobody is overfed or starves by design
            assertEquals(spentKj, fedKj, 0.05 * spentKj, layout.name());
        }
    }

    @Test
    void everyRopeAndBeamIsThinEnoughToGripOrBroadEnoughToWalkOn() {
        for (Variant layout : study.layouts()) {
            for (Support support : layout.enclosure().supports()) {
                if (support.kind() == SupportKind.ROPE || support.kind() == SupportKind.BEAM) {
                    double d = support.diameterM();
                    assertTrue(d <= 0.09 || d >= 0.30, support.id());
                }
            }
        }
    }

    @Test
    void ropesAreDrawnInPiecesOfAboutHalfAMetre() {
        for (Variant layout : study.layouts()) {
            for (Support support : layout.enclosure().supports()) {
                if (support.kind() == SupportKind.ROPE
                        && support.axis().pieces().size() > 1) {
                    for (Segment piece : support.axis().pieces()) {
                        assertTrue(piece.lengthM() > 0.3 && piece.lengthM() < 0.6, support.id());
                    }
                }
            }
        }
    }

    private List<String> unreachableAloft(String variant, Body body) {
        Routes routes = routes(variant, body);
        RouteGraph graph = routes.graph();
        List<String> cut = new ArrayList<>();
        for (String from : List.of("hatch", "tray", "trough", "nest-1", "nest-3", "nest-4", "nest-5", "nest-tree")) {
            for (String to : List.of("hatch", "tray", "trough", "nest-1", "nest-3", "nest-4", "nest-5", "nest-tree")) {
                if (leastAloft(routes, graph, from, to).isEmpty()) {
                    cut.add(from + " to " + to);
                }
            }
        }
        return cut;
    }

    private static Optional<Integer> leastAloft(Routes routes, RouteGraph graph, String from, String to) {
        int least = ReverseTree.UNREACHABLE;
        for (int hold : graph.useHolds(graph.resourceNumber(from))) {
            least = Math.min(least, routes.offGroundMilliJ(hold, graph.resourceNumber(to)));
        }
        return least == ReverseTree.UNREACHABLE ? Optional.empty() : Optional.of(least);
    }

    private Routes routes(String variant, Body body) {
        RouteGraph graph = graphs.computeIfAbsent(
                variant,
                name -> RouteGraph.compile(
                        study.find(name).orElseThrow().enclosure(), GraphSettings.forBodies(study.bodies())));
        return new Routes(
                graph, MoveCosts.of(graph, body, EnergySettings.standard()), ChoiceSharpness.GROUP.standard());
    }
}
