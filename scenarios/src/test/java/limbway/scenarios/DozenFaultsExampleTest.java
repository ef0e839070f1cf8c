package limbway.scenarios;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

import limbway.model.body.Body;
import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.Door;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Support;
import limbway.model.energy.Elasticities;
import limbway.model.energy.EnergySettings;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.Grasp;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.ReverseTree;
import limbway.model.route.Routes;
import limbway.model.strength.BearingLoad;
import limbway.model.strength.Strengths;
import limbway.model.study.Feeding;
import limbway.model.study.Study;
import limbway.model.study.Variant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Each of the dozen faults is there, asked of the enclosure or of its route graph. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS) // so that each graph is compiled once
class DozenFaultsExampleTest {

    private static final int MORNING_S = 8 * 3600;

    private final Study study = Examples.read("a-dozen-faults.yaml").study();
    private final Variant drawn = study.base();
    private final Map<String, RouteGraph> graphs = new LinkedHashMap<>();

    /** Where a body gets to from the first nest at eight in the morning: by any way, and without the ground. */
    private record Reach(List<String> anyhow, List<String> aloft) {}

    private Reach reach(Variant layout, Body body, int secondOfDay) {
        RouteGraph graph = graphs.computeIfAbsent(
                layout.name(), name -> RouteGraph.compile(layout.enclosure(), GraphSettings.forBodies(study.bodies())));
        Routes routes = new Routes(
                graph,
                MoveCosts.of(graph, body, EnergySettings.standard()).at(secondOfDay),
                ChoiceSharpness.GROUP.standard());
        int start = graph.useHolds(graph.resourceNumber("nest-1"))[0];
        List<String> anyhow = new ArrayList<>();
        List<String> aloft = new ArrayList<>();
        for (Resource resource : graph.resources()) {
            int number = graph.resourceNumber(resource.id());
            if (routes.cheapestMilliJ(start, number) != ReverseTree.UNREACHABLE) {
                anyhow.add(resource.id());
            }
            if (routes.offGroundMilliJ(start, number) != ReverseTree.UNREACHABLE) {
                aloft.add(resource.id());
            }
        }
        return new Reach(anyhow, aloft);
    }

    private Reach morning(Body body) {
        return reach(drawn, body, MORNING_S);
    }

    private Body body(String name) {
        return study.bodies().stream()
                .filter(body -> body.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private Support support(String id) {
        return SmallCage.support(drawn.enclosure(), id);
    }

    @Test
    void twelveFaultsAreMarked() {
        assertEquals(
                12,
                Pattern.compile("# FAULT \\d+:")
                        .matcher(Examples.text("a-dozen-faults.yaml"))
                        .results()
                        .count());
    }

    @Test
    void theLogIsTooThickToGripAndTooNarrowToWalkOn() {
        for (Body body : study.bodies()) {
            assertFalse(Grasp.canUse(body, support("log")), body.name());
        }
    }

    @Test
    void theFigLimbBearsNobodyButTheJuvenile() {
        var loads = new BearingLoad(Strengths.standard(), Elasticities.standard());
        for (Body body : study.bodies()) {
            boolean borne = loads.of(support("fig-limb")).bears(body.massKg());
            assertEquals(body.name().equals("juvenile"), borne, body.name());
            assertEquals(borne, morning(body).anyhow().contains("figs"), body.name());
        }
    }

    @Test
    void onlyTheMaleReachesOverTheGap() {
        for (Body body : study.bodies()) {
            boolean male = body.name().equals("flanged male");
            assertEquals(male, morning(body).aloft().contains("far-seat"), body.name());
        }
    }

    @Test
    void theBoxHangsOnOneWay() {
        for (Body body : study.bodies()) {
            assertTrue(morning(body).aloft().contains("box"), body.name());
            Variant cut = new Variant(
                    "cut",
                    "",
                    drawn.enclosure()
                            .withSupports(drawn.enclosure().supports().stream()
                                    .filter(support -> !support.id().equals("only-way"))
                                    .toList()),
                    drawn.feedings());
            assertFalse(reach(cut, body, MORNING_S).anyhow().contains("box"), body.name());
        }
    }

    @Test
    void onlyTheJuvenileFindsNoStepUpToTheLedge() {
        for (Body body : study.bodies()) {
            boolean juvenile = body.name().equals("juvenile");
            assertEquals(!juvenile, morning(body).anyhow().contains("ledge-seat"), body.name());
        }
    }

    @Test
    void theMastStandsWithinReachOfTheTopOfTheWall() {
        Barrier wall = drawn.enclosure().bounds().barriers().get(0);
        Support mast = support("mast-6");
        double acrossM = 19.9 - mast.axis().end().yM();
        assertTrue(mast.axis().end().zM() > wall.topZM() && mast.bearing().sways());
        assertTrue(acrossM < body("juvenile").gapReachM());
    }

    @Test
    void noFingerGoesThroughTheScreen() {
        Panel screen = drawn.enclosure().panels().get(0);
        double fingerShare = GraphSettings.forBodies(study.bodies()).fingerShare();
        for (Body body : study.bodies()) {
            assertTrue(body.gripDiameterM() * fingerShare > screen.openingM(), body.name());
        }
    }

    @Test
    void nobodyGetsToTheShadeBehindTheWire() {
        for (Body body : study.bodies()) {
            assertFalse(morning(body).anyhow().contains("under-bamboo"), body.name());
        }
    }

    @Test
    void theDenIsShutWheneverItsMealIsPutOut() {
        Door door = drawn.enclosure().bounds().doors().get(0);
        List<Feeding> meals = drawn.feedings().stream()
                .filter(feeding -> feeding.resource().equals("den-meal"))
                .toList();
        assertEquals(2, meals.size());
        for (Feeding meal : meals) {
            assertFalse(door.isOpenAt(meal.at().toSecondOfDay()));
        }
        for (Body body : study.bodies()) {
            assertFalse(morning(body).anyhow().contains("den-meal"), body.name());
            assertTrue(reach(drawn, body, 11 * 3600).anyhow().contains("den-meal"), body.name());
        }
    }

    @Test
    void theTrayIsReachedOverTheGroundOnly() {
        for (Body body : study.bodies()) {
            assertTrue(morning(body).anyhow().contains("tray"), body.name());
            assertFalse(morning(body).aloft().contains("tray"), body.name());
        }
    }

    @Test
    void stationsAndNestsAreFewerThanAnimals() {
        assertTrue(stalls(drawn, ResourceKind.FOOD) < study.animals().size());
        assertTrue(stalls(drawn, ResourceKind.NEST) < study.animals().size());
    }

    private static int stalls(Variant layout, ResourceKind kind) {
        return layout.enclosure().resources().stream()
                .filter(resource -> resource.kind() == kind)
                .mapToInt(Resource::stalls)
                .sum();
    }

    @Test
    void theFirstRepairsMendWhatTheySay() {
        Variant repaired = study.find("first repairs").orElseThrow();
        Reach juvenile = reach(repaired, body("juvenile"), MORNING_S);
        assertTrue(juvenile.anyhow().contains("ledge-seat"));
        assertTrue(juvenile.anyhow().contains("den-meal"));
        assertTrue(Grasp.canUse(body("juvenile"), SmallCage.support(repaired.enclosure(), "log")));
        assertTrue(stalls(repaired, ResourceKind.FOOD) >= study.animals().size());
    }
}
