package limbway.scenarios;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.RouteGraph;
import limbway.model.parameter.Parameter;

import static org.junit.jupiter.api.Assertions.assertEquals;

/**
 * The measured hectare of {@code data/waka}, checked against the figures in its README, which an independent script
 * computed.
 *
 * <p>Figures over all 504 stems are checked beside the reader of the table; the enclosure keeps one stem of each of the 494
 * trees.
 */
class WakaTest {

    private final Reading.Read reading = Examples.read("forest.yaml");
    private final Enclosure forest = reading.study().base().enclosure();

    private List<Point> feet() {
        return forest.supports().stream().map(trunk -> trunk.axis().start()).toList();
    }

    @Test
    @Tag("derived")
    void everyPositionBecomesOneTreeWithACrown() {
        assertEquals(494, forest.supports().size());
        assertEquals(494, forest.crowns().size());
        assertEquals(494, new TreeSet<>(feet().stream().map(Point::toString).toList()).size());
        assertEquals("waka-1", forest.supports().get(0).id());
        assertEquals(Material.BARK, forest.supports().get(0).material());
        assertEquals("waka-1", forest.crowns().get(0).trunk());
    }

    @Test
    void whatWasDoneWithTheTableIsTold() {
        String table =
                Examples.FOLDER.resolve("../data/waka/waka.csv").normalize().toString();
        assertEquals(
                List.of(
                        table
                                + ": 10 of 504 stems stand where an earlier one stands; these are trees of several stems, of "
                                + "which the thickest is kept: 494 trees",
                        table + ": trees thinner or thicker than those that the height curve was made for: 2"),
                reading.notes());
    }

    @ParameterizedTest(name = "within {0} m: {1} pairs, {2} pieces, the largest of {3} trees")
    @CsvSource({"3, 344, 229, 23", "5, 923, 42, 76", "8, 2281, 1, 494"})
    @Tag("derived")
    void treesWithinReachFormPieces(double reachM, int pairs, int pieces, int largest) {
        Pieces found = new Pieces(feet().size());
        int count = 0;
        for (Link link : links()) {
            if (link.lengthM() <= reachM) {
                count++;
                found.join(link.a(), link.b());
            }
        }
        assertEquals(pairs, count);
        assertEquals(pieces, found.count());
        assertEquals(largest, found.largest());
    }

    @Test
    @Tag("derived")
    void theShortestTreeOfLinksHasItsLongestAtJustUnderEightMetres() {
        List<Link> links = new ArrayList<>(links());
        links.sort(Comparator.comparingDouble(Link::lengthM));
        Pieces joined = new Pieces(feet().size());
        double sumM = 0;
        double longestM = 0;
        for (Link link : links) {
            if (joined.join(link.a(), link.b())) {
                sumM += link.lengthM();
                longestM = link.lengthM();
            }
        }
        double halfLastDigitM = 5e-5;
        assertEquals(7.9932, longestM, halfLastDigitM);
        assertEquals(1466.5819, sumM, halfLastDigitM);
    }

    /** Stems as thin poles, all of one height: whoever reaches across the longest link goes everywhere, who reaches less does not. */
    @ParameterizedTest(name = "a reach {0} m beyond the longest link: {1} pieces")
    @CsvSource({"0.0001, 1", "-0.0001, 2"})
    @Tag("derived")
    void theRouteGraphIsOnePieceFromTheLongestLinkOn(double beyondM, int pieces) {
        double diameterM = 0.01;
        double longestM = 7.9932 + beyondM - diameterM;
        Body gibbon = BodyCatalogue.standard().find("siamang").orElseThrow();
        Body longArms =
                new Body("long arms", 12, 14, 20, longestM, longestM, 0, 0, 0.1, 0.5, 0.15, false, gibbon.speeds());
        List<Support> stems = forest.supports().stream()
                .map(trunk -> new Support(
                        trunk.id(),
                        SupportKind.POLE,
                        Polyline.straight(
                                trunk.axis().start().atHeight(20),
                                trunk.axis().start().atHeight(20.2)),
                        diameterM,
                        Material.PAINTED_STEEL))
                .toList();
        Enclosure only = new Enclosure(forest.site(), forest.ground(), stems, List.of(), List.of(), List.of());
        RouteGraph graph = RouteGraph.compile(only, GraphSettings.forBodies(List.of(longArms)));
        Pieces found = new Pieces(graph.holdCount());
        for (int move = 0; move < graph.moveCount(); move++) {
            boolean reached = graph.gapM(move) <= longArms.gapReachM();
            if (reached && !graph.moveOnGround(move)) {
                found.join(graph.from(move), graph.to(move));
            }
        }
        long onGround =
                IntStream.range(0, graph.holdCount()).filter(graph::onGround).count();
        assertEquals(pieces, found.count() - onGround);
    }

    /** ln H = 0.893 + 0.760 ln D - 0.0340 (ln D)^2 at D = 12.1 cm gives 13.1509 m; radius 0.55 sqrt 12.1 = 1.9132 m. */
    @Test
    @Tag("derived")
    void heightAndCrownFollowTheAllometry() {
        Crown crown = forest.crowns().get(0);
        assertEquals(0.121, forest.supports().get(0).diameterM());
        double halfLastDigitM = 5e-5;
        assertEquals(13.1509, crown.topZM(), halfLastDigitM);
        assertEquals(1.9132, crown.radiusM(), halfLastDigitM);
        assertEquals(0.6 * crown.topZM(), crown.baseZM(), halfLastDigitM);
        assertEquals(
                List.of(
                        "allometry.height-constant",
                        "allometry.height-slope",
                        "allometry.height-curve",
                        "allometry.height-stress",
                        "allometry.crown-radius-factor",
                        "allometry.crown-radius-exponent",
                        "allometry.crown-base-share",
                        "body.infant.mass"),
                reading.parameters().stream().map(Parameter::name).toList());
    }

    @Test
    void theStormTakesThreeTrees() {
        List<Support> after = reading.study()
                .find("after the storm")
                .orElseThrow()
                .enclosure()
                .supports();
        assertEquals(491, after.size());
    }

    private record Link(int a, int b, double lengthM) {}

    private List<Link> links() {
        List<Point> feet = feet();
        List<Link> links = new ArrayList<>();
        for (int a = 0; a < feet.size(); a++) {
            for (int b = a + 1; b < feet.size(); b++) {
                links.add(new Link(a, b, feet.get(a).planDistanceM(feet.get(b))));
            }
        }
        return links;
    }

    /** Groups of trees, joined pair by pair. */
    private static final class Pieces {

        private final int[] parent;

        Pieces(int size) {
            parent = new int[size];
            Arrays.setAll(parent, i -> i);
        }

        boolean join(int a, int b) {
            int rootA = root(a);
            int rootB = root(b);
            parent[rootA] = rootB;
            return rootA != rootB;
        }

        int count() {
            int roots = 0;
            for (int i = 0; i < parent.length; i++) {
                roots += parent[i] == i ? 1 : 0;
            }
            return roots;
        }

        int largest() {
            int[] sizes = new int[parent.length];
            for (int i = 0; i < parent.length; i++) {
                sizes[root(i)]++;
            }
            return Arrays.stream(sizes).max().orElse(0);
        }

        private int root(int i) {
            int at = i;
            while (parent[at] != at) {
                at = parent[at];
            }
            return at;
        }
    }
}
