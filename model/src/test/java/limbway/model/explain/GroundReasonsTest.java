package limbway.model.explain;

import java.time.ZoneOffset;
import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Ground;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Site;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.route.Search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Small enclosures in which what is missing can be read off the drawing. */
@Tag("derived")
class GroundReasonsTest {

    private static final Body FEMALE =
            BodyCatalogue.standard().find("adult female").orElseThrow();

    /** Places are computed by adding and scaling of a few numbers below 100 m. */
    private static final double ROUNDING_M = 1e-9;

    private static Support bar(String id, Point a, Point b, double diameterM, Material material) {
        return new Support(id, SupportKind.BEAM, Polyline.straight(a, b), diameterM, material);
    }

    private static Support steel(String id, double x0M, double x1M) {
        return bar(id, new Point(x0M, 5, 5), new Point(x1M, 5, 5), 0.10, Material.GALVANISED_STEEL);
    }

    private static Resource food(String id, double xM, double zM, String on) {
        return new Resource(id, ResourceKind.FOOD, new Point(xM, 5, zM), on, 1);
    }

    private static Enclosure enclosure(
            List<Support> supports, List<Platform> decks, List<Crown> crowns, Resource... resources) {
        return new Enclosure(
                new Site(1, 110, ZoneOffset.UTC),
                new Ground(Outline.rectangle(0, 0, 40, 10), "grass", List.of()),
                supports,
                decks,
                crowns,
                List.of(resources));
    }

    private static Routes routes(Enclosure enclosure) {
        RouteGraph graph = RouteGraph.compile(enclosure, GraphSettings.forBodies(List.of(FEMALE)));
        return new Routes(
                graph, MoveCosts.of(graph, FEMALE, EnergySettings.standard()), ChoiceSharpness.GROUP.standard());
    }

    private static GroundReason missing(Enclosure enclosure) {
        return new GroundReasons(enclosure, routes(enclosure)).missing(0, 1);
    }

    private static Chain chain(Enclosure enclosure) {
        return assertInstanceOf(GroundReason.Missing.class, missing(enclosure)).chain();
    }

    @Test
    void aGapIsMeasuredFromSurfaceToSurfaceAndKnowsThatTheBarEndsThere() {
        // a ends at x = 10; the post of 0.2 m stands at x = 13: 3 m less the two radii of 0.05 m and 0.1 m
        Support post = bar("post", new Point(13, 5, 3), new Point(13, 5, 8), 0.2, Material.BARK);
        Chain chain = chain(enclosure(
                List.of(steel("a", 2, 10), post),
                List.of(),
                List.of(),
                food("n", 2, 5, "a"),
                food("f", 13, 7, "post")));
        assertEquals(1, chain.gaps().size());
        Gap gap = chain.gaps().get(0);
        assertEquals("a", gap.from());
        assertEquals("post", gap.to());
        assertEquals(2.85, gap.clearM(), ROUNDING_M);
        assertTrue(gap.fromAtEnd());
        assertEquals(false, gap.toAtEnd());
    }

    @Test
    void twoGapsOfTwoMetresAreBetterThanOneOfFive() {
        // a to c directly 5 m; over the stone b, which is 1 m long, 2 m and 2 m, each less 0.1 m of bars
        Chain chain = chain(enclosure(
                List.of(steel("a", 2, 10), steel("b", 12, 13), steel("c", 15, 20)),
                List.of(),
                List.of(),
                food("n", 2, 5, "a"),
                food("f", 20, 5, "c")));
        assertEquals(List.of("a", "b"), chain.gaps().stream().map(Gap::from).toList());
        assertEquals(1.9, chain.widestM(), ROUNDING_M);
    }

    @Test
    void aPostTooThickToHoldIsNamedInsteadOfAGap() {
        Support post = bar("post", new Point(11, 5, 1), new Point(11, 5, 8), 0.3, Material.GALVANISED_STEEL);
        Chain chain = chain(enclosure(
                List.of(steel("a", 2, 10), post, steel("c", 12, 20)),
                List.of(),
                List.of(),
                food("n", 2, 5, "a"),
                food("f", 20, 5, "c")));
        // a and c are 2 m apart, more than the reach of 1.5 m; the post between them is within reach of both
        assertEquals(List.of(), chain.gaps());
        assertEquals(List.of("post"), chain.tooThick().stream().map(Support::id).toList());
    }

    @Test
    void foodOnTheGroundHasNothingToHold() {
        GroundReason reason = missing(enclosure(
                List.of(steel("a", 2, 10)), List.of(), List.of(), food("n", 2, 5, "a"), food("f", 10, 0, "")));
        GroundReason.NothingToHold nothing = assertInstanceOf(GroundReason.NothingToHold.class, reason);
        assertEquals("f", nothing.resource());
        assertEquals("a", nothing.nearest().orElseThrow());
        // 5 m above less the radius of the bar
        assertEquals(4.95, nothing.awayM(), ROUNDING_M);
    }

    @Test
    void moreThanTwelveMetresIsNoGapToClose() {
        GroundReason reason = missing(enclosure(
                List.of(steel("a", 2, 5), steel("b", 20, 25)),
                List.of(),
                List.of(),
                food("n", 2, 5, "a"),
                food("f", 25, 5, "b")));
        assertEquals(new GroundReason.TooFar(12), reason);
    }

    @Test
    void decksAndCrownsCountAsPlacesToGoOn() {
        Platform deck = new Platform("deck", Outline.rectangle(12, 4, 14, 6), 5);
        Crown crown = new Crown("crown", "", new Point(18, 5, 0), 2, 4, 8);
        Chain chain = chain(enclosure(
                List.of(steel("a", 2, 10)), List.of(deck), List.of(crown), food("n", 2, 5, "a"), food("f", 18, 6, "")));
        // bar to deck edge 2 m less its radius; deck edge at 14 m to crown at 16 m
        assertEquals(1.95, chain.gaps().get(0).clearM(), ROUNDING_M);
        // the search along the edge stops at a third of its length to the power of 60
        assertEquals(2, chain.gaps().get(1).clearM(), ROUNDING_M);
    }

    @Test
    void aWayOffTheGroundThatCostsMoreIsDearerNotMissing() {
        // a frame of 5 m height, from the foot of one post to the foot of the other: climbing costs more than walking
        Support left = bar("left", new Point(5, 5, 0), new Point(5, 5, 5), 0.1, Material.BARK);
        Support right = bar("right", new Point(9, 5, 0), new Point(9, 5, 5), 0.1, Material.BARK);
        Enclosure frame = enclosure(
                List.of(left, right, bar("top", new Point(5, 5, 5), new Point(9, 5, 5), 0.1, Material.BARK)),
                List.of(),
                List.of(),
                food("n", 5, 0, "left"),
                food("f", 9, 0, "right"));
        Routes routes = routes(frame);
        Search.Reached ways =
                assertInstanceOf(Search.Reached.class, PairWays.find(routes, ChoiceSharpness.GROUP.standard(), 0, 1));
        GroundReason.Dearer dearer =
                assertInstanceOf(GroundReason.Dearer.class, new GroundReasons(frame, routes).of(0, 1, ways));
        assertEquals(14, dearer.offGround().lengthM(), ROUNDING_M);
        assertEquals(4, dearer.overGround().lengthM(), ROUNDING_M);
        assertTrue(ways.offGroundShare() < 0.5);
    }
}
