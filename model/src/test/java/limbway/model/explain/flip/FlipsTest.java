package limbway.model.explain.flip;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.alteration.Alteration;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.energy.EnergySettings;
import limbway.model.energy.InclineCost;
import limbway.model.explain.GroundReason;
import limbway.model.explain.flip.AskedTrips.Answer;
import limbway.model.geometry.HangingLine;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.graph.RouteGraph;
import limbway.model.scene.Scene;

import static limbway.model.explain.flip.AskedTrips.FEMALE;
import static limbway.model.explain.flip.AskedTrips.ask;
import static limbway.model.explain.flip.AskedTrips.assertTight;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Yards small enough to work by hand. */
class FlipsTest {

    private static Support bar(String id, double x0, double x1, double zM, double diameterM, Material material) {
        return new Support(
                id,
                SupportKind.BEAM,
                Polyline.straight(new Point(x0, 5, zM), new Point(x1, 5, zM)),
                diameterM,
                material);
    }

    /** Two posts, a bar from the first that ends short of the second, food on the second. */
    private static Enclosure gapYard(double barEndsM) {
        return Scene.yard(30, 10)
                .pole("west", 2, 5, 5)
                .pole("east", 12, 5, 5)
                .add(bar("arm", 2, barEndsM, 5, 0.08, Material.GALVANISED_STEEL))
                .resource("nest", ResourceKind.NEST, new Point(2, 5, 5), "west")
                .resource("tray", ResourceKind.FOOD, new Point(12, 5, 5), "east")
                .build();
    }

    @Test
    @Tag("derived")
    void anArmThatEndsShortIsCarriedOnByWhatIsMissing() {
        // from x = 9 to the axis of the post at 12, less both radii of 4 cm: what is clear, less what the body reaches
        double missingM = 3 - 0.08 - FEMALE.gapReachM();
        Answer answer = ask(gapYard(9), "nest", "tray");
        EndExtended arm = answer.changes(EndExtended.class).get(0);
        assertEquals("arm", arm.support());
        assertEquals(Math.ceil(missingM * 100 - 1e-6) / 100, arm.amountM(), 1e-9);
        assertTrue(assertTight(answer, "arm") > 0);
    }

    @Test
    @Tag("derived")
    void aPostIsPutNearerByWhatIsMissing() {
        double missingM = 3 - 0.08 - FEMALE.gapReachM();
        Enclosure enclosure = Scene.yard(30, 10)
                .pole("west", 2, 5, 5)
                .pole("prop", 9, 5, 5)
                .pole("east", 12, 5, 5)
                .rope(
                        "line",
                        HangingLine.between(new Point(2, 5, 4), new Point(9, 5, 4), 0.35)
                                .points()
                                .toArray(Point[]::new))
                .resource("nest", ResourceKind.NEST, new Point(2, 5, 5), "west")
                .resource("tray", ResourceKind.FOOD, new Point(12, 5, 5), "east")
                .build();
        Answer answer = ask(enclosure, "nest", "tray");
        PoleMoved prop = answer.changes(PoleMoved.class).get(0);
        assertEquals("prop", prop.pole());
        assertEquals(Math.ceil(missingM * 100 - 1e-6) / 100, prop.amountM(), 1e-9);
        // the rope comes along and keeps its sag of 5 % of the distance in plan
        Flip flip = answer.found().flips().stream()
                .filter(one -> one.change() == prop)
                .findFirst()
                .orElseThrow();
        Support line = ((Alteration.SupportReplaced) flip.alterations().get(1)).support();
        double planM = 7 + prop.amountM();
        assertEquals(HangingLine.between(new Point(2, 5, 4), new Point(2 + planM, 5, 4), 0.05 * planM), line.axis());
        assertTrue(assertTight(answer, "prop") > 0);
    }

    @Test
    @Tag("derived")
    void theShortestRopeBetweenTwoPostsIsLevel() {
        // nothing is nearer than 10 m, the distance of the posts, and at any height it costs less than down and up
        // again
        Answer answer = ask(gapYard(3), "nest", "tray");
        LinkAdded link = answer.changes(LinkAdded.class).get(0);
        assertTrue(link.amountM() <= 10 && link.amountM() >= 9 - 0.02, link.toString());
        assertEquals("east", link.to().on());
        assertTight(answer, "posts");
    }

    @Test
    @Tag("derived")
    void aBarTooThickToHoldIsThinnedToWhatTheBodyGrips() {
        Enclosure enclosure = Scene.yard(30, 10)
                .pole("west", 2, 5, 5)
                .pole("east", 12, 5, 5)
                .add(new Support(
                        "pipe",
                        SupportKind.BEAM,
                        Polyline.straight(new Point(2, 5, 3), new Point(12, 5, 5)),
                        0.17,
                        Material.GALVANISED_STEEL))
                .resource("nest", ResourceKind.NEST, new Point(2, 5, 5), "west")
                .resource("tray", ResourceKind.FOOD, new Point(12, 5, 5), "east")
                .build();
        Answer answer = ask(enclosure, "nest", "tray");
        Thinned pipe = answer.changes(Thinned.class).get(0);
        assertEquals(Math.floor(FEMALE.gripDiameterM() * 1000 + 1e-6) / 1000, pipe.diameterM(), 1e-9);
        assertTrue(assertTight(answer, "pipe") > 0);
    }

    @Test
    @Tag("derived")
    void twoGapsAreNotMendedByOneShorterGap() {
        Enclosure enclosure = Scene.yard(30, 10)
                .pole("west", 2, 5, 5)
                .add(bar("between", 6, 8, 5, 0.08, Material.GALVANISED_STEEL))
                .pole("east", 12, 5, 5)
                .resource("nest", ResourceKind.NEST, new Point(2, 5, 5), "west")
                .resource("tray", ResourceKind.FOOD, new Point(12, 5, 5), "east")
                .build();
        Answer answer = ask(enclosure, "nest", "tray");
        assertTrue(
                answer.found().none().contains(new NoFlip(FlipKind.GAP, NoFlip.Why.SEVERAL_THINGS_MISSING)),
                answer.found().toString());
        assertEquals(
                2, Flips.severalMissing(answer.reason()).orElseThrow().gaps().size());
    }

    @Test
    @Tag("derived")
    void aFeederOnTheGroundIsNotReachedByAnyRope() {
        Enclosure enclosure = Scene.yard(30, 10)
                .pole("west", 2, 5, 5)
                .pole("east", 8, 5, 5)
                .add(bar("arm", 2, 8, 5, 0.08, Material.GALVANISED_STEEL))
                .resource("nest", ResourceKind.NEST, new Point(2, 5, 5), "west")
                .food("tray", 12, 5, 0)
                .build();
        Answer answer = ask(enclosure, "nest", "tray");
        assertTrue(answer.found().none().contains(new NoFlip(FlipKind.LINK, NoFlip.Why.USED_FROM_GROUND)));
        assertTrue(answer.found().none().contains(new NoFlip(FlipKind.START, NoFlip.Why.USED_FROM_GROUND)));
        PlaceMoved tray = answer.changes(PlaceMoved.class).get(0);
        assertEquals("east", tray.at().on());
        assertTight(answer, "tray");
    }

    @Test
    void whatIsNotAllowedIsNotNamed() {
        Answer free = ask(gapYard(9), "nest", "tray");
        Answer bound = ask(gapYard(9), "nest", "tray", (changed, subjects) -> !subjects.contains("arm"));
        assertFalse(free.changes(EndExtended.class).isEmpty());
        assertTrue(bound.changes(EndExtended.class).isEmpty(), bound.found().toString());
        Answer nothing = ask(gapYard(9), "nest", "tray", (changed, subjects) -> false);
        assertEquals(List.of(), nothing.found().flips());
    }

    @Test
    void aTripOffTheGroundNeedsNoChange() {
        Answer answer = ask(gapYard(12), "nest", "tray");
        assertEquals(new GroundReason.OffGroundIsCheapest(), answer.reason());
        assertEquals(List.of(), answer.found().flips());
        assertEquals(0, answer.found().compiled());
    }

    @Test
    void theSameQuestionGivesTheSameAnswer() {
        assertEquals(
                ask(gapYard(9), "nest", "tray").found(),
                ask(gapYard(9), "nest", "tray").found());
    }

    private static final double HIGH_M = 4;
    private static final double APART_M = 10;
    private static final double LEVEL = InclineCost.jPerKgM(FEMALE.massKg(), 0);
    private static final double DOWN = InclineCost.jPerKgM(FEMALE.massKg(), -90);
    private static final double UP = InclineCost.jPerKgM(FEMALE.massKg(), 90);

    /** A level rope at one height that makes a detour between two posts; food at some height of the second. */
    private static Enclosure detour(double ropeM, double foodM) {
        double sideM = Math.sqrt(ropeM * ropeM - APART_M * APART_M) / 2;
        Point start = new Point(5, 5, HIGH_M);
        Point end = new Point(5 + APART_M, 5, HIGH_M);
        return Scene.yard(20, 200)
                .pole("west", 5, 5, HIGH_M)
                .pole("east", 5 + APART_M, 5, HIGH_M)
                .rope("rope", start, new Point(5 + APART_M / 2, 5 + sideM, HIGH_M), end)
                .resource("nest", ResourceKind.NEST, start, "west")
                .resource("tray", ResourceKind.FOOD, end.atHeight(foodM), "east")
                .build();
    }

    /** The rope costs mu M C(0) L, the ground M [C(-90) h + C(0) d + C(90) h]: equal at mu* = 2 / 1.2 for 1.2 L*. */
    @Test
    @Tag("derived")
    void theCostOfClamberingThatTurnsTheAnswerIsTheClosedForm() {
        double breakEvenM = (DOWN * HIGH_M + LEVEL * APART_M + UP * HIGH_M) / (2 * LEVEL);
        Answer answer = ask(detour(1.2 * breakEvenM, HIGH_M), "nest", "tray");
        PriceTurn turn = answer.found().turns().get(0);
        assertEquals("energy.clamber-multiplier", turn.parameter().name());
        // down to the next hundredth, so that the value named does turn it
        assertEquals(Math.floor(100 * 2 / 1.2) / 100, turn.turnsAt(), 1e-9);
        assertTrue(turn.toOffGround() && turn.isPlausible(), turn.toString());
        RouteGraph graph = RouteGraph.compile(
                answer.question().enclosure(), answer.question().settings());
        assertTrue(cost(answer.question(), graph, turn.turnsAt()).isOffGround());
        assertFalse(cost(answer.question(), graph, turn.turnsAt() + 0.01).isOffGround());
    }

    /** The other way round: a trip off the ground that a dearer clambering would bring down. */
    @Test
    @Tag("derived")
    void aTripOffTheGroundTellsWhichCostWouldTurnIt() {
        double breakEvenM = (DOWN * HIGH_M + LEVEL * APART_M + UP * HIGH_M) / (2 * LEVEL);
        double ropeM = 0.8 * breakEvenM;
        PriceTurn turn =
                ask(detour(ropeM, HIGH_M), "nest", "tray").found().turns().get(0);
        assertEquals("energy.clamber-multiplier", turn.parameter().name());
        // equal at 2 / 0.8; later if an arm's length at either end is reached over, which still costs 2 times walking
        double reachedM = 2 * FEMALE.gapReachM();
        double latest = (2.5 * ropeM - 2 * reachedM) / (ropeM - reachedM);
        assertTrue(turn.turnsAt() >= 2.5 && turn.turnsAt() <= latest + 0.01, turn + ", at the latest " + latest);
        assertFalse(turn.toOffGround());
    }

    /** Off: mu C(0) L + C(-90) (h - e); over: C(-90) h + C(0) d + C(90) e; equal at e* = C(0) (mu L - d) / (C(90) + C(-90)). */
    @Test
    @Tag("derived")
    void aFeederIsHungHigherByTheClosedForm() {
        double turnsAtM = 2.753;
        double ropeM = (turnsAtM * (UP + DOWN) + LEVEL * APART_M) / (2 * LEVEL);
        Answer answer = ask(detour(ropeM, 1), "nest", "tray");
        PlaceMoved tray = answer.changes(PlaceMoved.class).get(0);
        assertEquals("east", tray.at().on());
        assertEquals(1, tray.baseM());
        // up to the next centimetre
        assertEquals(1.76, tray.amountM(), 1e-9);
        assertTrue(assertTight(answer, "feeder") > 0);
    }

    private static TripCost cost(TripQuestion question, RouteGraph graph, double multiplier) {
        EnergySettings prices = EnergySettings.standard().with(Map.of("energy.clamber-multiplier", multiplier));
        return TripCost.of(
                graph,
                question.costs(graph, prices),
                question.sharpness(),
                graph.resourceNumber(question.from()),
                graph.resourceNumber(question.to()));
    }
}
