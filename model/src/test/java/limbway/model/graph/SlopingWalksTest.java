package limbway.model.graph;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Ground;
import limbway.model.enclosure.ResourceKind;
import limbway.model.energy.EnergySettings;
import limbway.model.energy.ZigzagCost;
import limbway.model.geometry.Point;
import limbway.model.geometry.Terrain;
import limbway.model.geometry.Triangle;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.scene.DijkstraReference;
import limbway.model.scene.FineWalks;
import limbway.model.scene.Hills;
import limbway.model.scene.RandomEnclosure;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class SlopingWalksTest {

    private static final Body FEMALE =
            BodyCatalogue.standard().find("adult female").orElseThrow();

    /** The promise of docs/model.md. */
    private static final double ONE_PER_CENT = 0.01;

    /** The reference, too, passes seams only at its own places, and can therefore be a little dearer than the graph. */
    private static final double REFERENCE_ERROR = 0.006;

    private static final double MILLIJOULE = 1e-3;

    @Test
    void levelGroundCutIntoTrianglesIsLevelGround() {
        for (long seed = 1; seed <= 10; seed++) {
            var level = RandomEnclosure.of(seed);
            var cut = cutIntoTriangles(level);
            Asked one = new Asked(RouteGraph.compile(level, settings()));
            Asked other = new Asked(RouteGraph.compile(cut, settings()));
            assertEquals(one.graph.holdCount(), other.graph.holdCount(), "seed " + seed);
            assertEquals(one.graph.moveCount(), other.graph.moveCount(), "seed " + seed);
            for (int i = 0; i < level.resources().size(); i++) {
                for (int j = 0; j < level.resources().size(); j++) {
                    assertEquals(one.milliJ(i, j), other.milliJ(i, j), "seed " + seed);
                }
            }
        }
    }

    private static Enclosure cutIntoTriangles(Enclosure level) {
        Ground ground = new Ground(
                level.ground().outline(),
                level.ground().surface(),
                level.ground().obstacles(),
                Hills.grid(24, 16, 4, (x, y) -> 0));
        return new Enclosure(
                level.site(), ground, level.supports(), level.platforms(), level.crowns(), level.resources());
    }

    /** On one plane the cheapest way is straight, at the price of the cheaper of straight on and zigzag. */
    @ParameterizedTest
    @Tag("derived")
    @ValueSource(doubles = {5, 10, 15, 20, 25})
    void aPlaneIsWalkedStraightOrInZigzags(double planeDeg) {
        Terrain terrain = Hills.plane(20, 20, planeDeg);
        List<Point> places = places(20, 20, terrain);
        Asked asked = ask(Scene.yard(20, 20).terrain(terrain), places);
        ZigzagCost cost = new ZigzagCost(FEMALE.massKg());
        for (int i = 0; i < places.size(); i++) {
            for (int j = 0; j < places.size(); j++) {
                Point way = places.get(j).minus(places.get(i));
                double joules = i == j ? 0 : FEMALE.massKg() * way.lengthM() * cost.jPerKgM(slopeDeg(way));
                assertEquals(joules, asked.milliJ(i, j) / 1000.0, 2 * MILLIJOULE, "from " + i + " to " + j);
            }
        }
        assertTrue(asked.graph.holdCount() < 30, "a plane needs no places but those of the resources");
    }

    @ParameterizedTest
    @CsvSource({"0.25", "-0.25", "0.45"})
    void aRidgeAndAValleyCostWhatTheFineReferenceSays(double fall) {
        assertAsFine(20, 10, Hills.grid(20, 10, 5, (x, y) -> 3 - fall * Math.abs(x - 10)), 5);
    }

    @ParameterizedTest
    @CsvSource({"5,8,1", "5,15,2", "2.5,15,3", "2.5,25,4", "1,15,5"})
    void bumpyGroundCostsWhatTheFineReferenceSays(double cellM, double slopeDeg, long seed) {
        double eastM = cellM == 1 ? 6 : 15;
        double northM = cellM == 1 ? 5 : 10;
        assertAsFine(eastM, northM, Hills.bumpy(eastM, northM, cellM, slopeDeg, seed), cellM);
    }

    private static void assertAsFine(double eastM, double northM, Terrain terrain, double cellM) {
        List<Point> places = places(eastM, northM, terrain);
        Asked asked = ask(Scene.yard(eastM, northM).terrain(terrain), places);
        FineWalks fine = new FineWalks(terrain, cellM / 48, FEMALE.massKg());
        for (int i = 0; i < places.size(); i += 4) {
            double[] leastJ = fine.leastJ(places.get(i), places);
            for (int j = 0; j < places.size(); j++) {
                if (i != j) {
                    double excess = asked.milliJ(i, j) / 1000.0 / leastJ[j] - 1;
                    String which = "from " + places.get(i) + " to " + places.get(j) + ": " + excess;
                    assertTrue(excess < ONE_PER_CENT, which);
                    double stepShare = cellM / 48 / places.get(i).distanceM(places.get(j));
                    assertTrue(excess > -REFERENCE_ERROR - stepShare, which);
                }
            }
        }
    }

    /** Across a slope of 20 degrees round a rock: by its lower corners or its upper ones, both worked by hand. */
    @Test
    @Tag("derived")
    void obstaclesOnASlopeAreWalkedRoundAtTheirCorners() {
        Terrain terrain = Hills.plane(20, 20, 20);
        Point a = on(terrain, 2, 9);
        Point b = on(terrain, 18, 9);
        Asked asked = ask(Scene.yard(20, 20).terrain(terrain).rock("rock", 8, 4, 12, 12), List.of(a, b));
        double above = walkJ(a, on(terrain, 8, 12), on(terrain, 12, 12), b);
        double below = walkJ(a, on(terrain, 8, 4), on(terrain, 12, 4), b);
        // one rounding for each of the three straight walks
        assertEquals(Math.min(above, below), asked.milliJ(0, 1) / 1000.0, 3 * MILLIJOULE);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void walksNeverLeaveTheSurfaceNorEnterARock(long seed) {
        Terrain terrain = Hills.bumpy(15, 10, 2.5, 20, seed);
        RouteGraph graph = ask(
                        Scene.yard(15, 10).terrain(terrain).rock("rock", 5.3, 3.1, 8.7, 6.2),
                        List.of(on(terrain, 1, 1), on(terrain, 14, 9)))
                .graph;
        for (int move = 0; move < graph.moveCount(); move++) {
            Point from = graph.place(graph.from(move));
            Point along = graph.place(graph.to(move)).minus(from);
            for (double share : new double[] {0, 0.31, 0.5, 0.83, 1}) {
                Point p = from.plus(along.times(share));
                // holds are one within a micrometre, and slopes here stay below 45 degrees
                assertEquals(terrain.heightM(p.xM(), p.yM()), p.zM(), 3e-6, () -> "at " + p);
                boolean inRock =
                        p.xM() > 5.3 + 1e-5 && p.xM() < 8.7 - 1e-5 && p.yM() > 3.1 + 1e-5 && p.yM() < 6.2 - 1e-5;
                assertTrue(!inRock, () -> "in the rock at " + p);
            }
        }
    }

    /** Mirrored, turned by a quarter and with its triangles in another order, a terrain costs the same. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void hillsCostTheSameHoweverTheyAreLaidOutAndListed(long seed) {
        Terrain terrain = Hills.bumpy(15, 10, 5, 20, seed);
        List<Point> places = places(15, 10, terrain);
        Asked asked = ask(Scene.yard(15, 10).terrain(terrain), places);
        List<Triangle> backwards = new ArrayList<>(terrain.triangles());
        Collections.reverse(backwards);
        assertSameCosts(asked, ask(Scene.yard(15, 10).terrain(new Terrain(backwards)), places));
        UnaryOperator<Point> mirror = p -> new Point(15 - p.xM(), p.yM(), p.zM());
        assertSameCosts(asked, ask(Scene.yard(15, 10).terrain(mapped(terrain, mirror)), mapped(places, mirror)));
        UnaryOperator<Point> turn = p -> new Point(10 - p.yM(), p.xM(), p.zM());
        assertSameCosts(asked, ask(Scene.yard(10, 15).terrain(mapped(terrain, turn)), mapped(places, turn)));
    }

    /** A frame on a hill, its poles sunk in and its rope now near the ground and now high above it. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void framesOnHillsCostTheSameMirrored(long seed) {
        Terrain terrain = Hills.bumpy(15, 10, 5, 15, seed);
        List<Point> places = places(15, 10, terrain);
        UnaryOperator<Point> mirror = p -> new Point(15 - p.xM(), p.yM(), p.zM());
        Scene mirrored = frame(mirror).terrain(mapped(terrain, mirror));
        assertSameCosts(ask(frame(p -> p).terrain(terrain), places), ask(mirrored, mapped(places, mirror)));
    }

    private static Scene frame(UnaryOperator<Point> map) {
        Point west = new Point(2, 3, -0.5);
        Point east = new Point(12, 7, -0.5);
        Point deckWest = map.apply(new Point(5, 4, 0));
        Point deckEast = map.apply(new Point(7, 6, 0));
        return Scene.yard(15, 10)
                .beam("west", 0.08, map.apply(west), map.apply(west.atHeight(5)))
                .beam("east", 0.08, map.apply(east), map.apply(east.atHeight(5)))
                .rope("rope", map.apply(west.atHeight(1)), map.apply(east.atHeight(2.5)))
                .deck("deck", Math.min(deckWest.xM(), deckEast.xM()), 4, Math.max(deckWest.xM(), deckEast.xM()), 6, 1.5)
                .resource("tray", ResourceKind.FOOD, map.apply(west.atHeight(4)), "west");
    }

    private static void assertSameCosts(Asked one, Asked other) {
        for (int i = 0; i < one.graph.resources().size(); i++) {
            for (int j = 0; j < one.graph.resources().size(); j++) {
                // heights computed in another order differ in the last digit, and a walk by a rounding of 1 mJ at most;
                // a way over these hills has fewer than 20 walks
                assertEquals(one.milliJ(i, j), other.milliJ(i, j), 20);
            }
        }
    }

    private static Terrain mapped(Terrain terrain, UnaryOperator<Point> map) {
        return new Terrain(terrain.triangles().stream()
                .map(t -> new Triangle(map.apply(t.a()), map.apply(t.b()), map.apply(t.c())))
                .toList());
    }

    private static List<Point> mapped(List<Point> places, UnaryOperator<Point> map) {
        return places.stream().map(map).toList();
    }

    /** A pole on a hill top stands on the ground, and its top is as high above it as the pole is long. */
    @Test
    void heightsAreAboveTheGroundStraightBelow() {
        Terrain terrain = Hills.plane(20, 20, 15);
        Point foot = on(terrain, 10, 10);
        Scene scene = Scene.yard(20, 20).terrain(terrain).rope("rope", foot, foot.atHeight(foot.zM() + 3));
        RouteGraph graph = RouteGraph.compile(scene.build(), settings());
        double highestM = 0;
        int standing = 0;
        for (int hold = 0; hold < graph.holdCount(); hold++) {
            highestM = Math.max(highestM, graph.heightAboveGroundM(hold));
            standing += graph.onGround(hold) ? 1 : 0;
        }
        assertEquals(3, highestM, 1e-9);
        assertEquals(1, standing);
    }

    @Test
    void routesOverHillsEqualDijkstra() {
        Terrain terrain = Hills.bumpy(15, 10, 5, 20, 7);
        List<Point> places = places(15, 10, terrain);
        Asked asked = ask(Scene.yard(15, 10).terrain(terrain).pole("pole", 5, 5, 4), places);
        DijkstraReference reference =
                new DijkstraReference(asked.graph, MoveCosts.of(asked.graph, FEMALE, EnergySettings.standard()));
        int[] least = reference.cheapest(asked.graph.useHolds(3));
        for (int i = 0; i < places.size(); i++) {
            assertEquals(least[asked.graph.useHolds(i)[0]], asked.milliJ(i, 3));
        }
    }

    private static GraphSettings settings() {
        return GraphSettings.forBodies(List.of(FEMALE));
    }

    private static double walkJ(Point... way) {
        ZigzagCost cost = new ZigzagCost(FEMALE.massKg());
        double sum = 0;
        for (int i = 1; i < way.length; i++) {
            Point step = way[i].minus(way[i - 1]);
            sum += FEMALE.massKg() * step.lengthM() * cost.jPerKgM(slopeDeg(step));
        }
        return sum;
    }

    private static double slopeDeg(Point way) {
        return StrictMath.toDegrees(StrictMath.asin(way.zM() / way.lengthM()));
    }

    private static Point on(Terrain terrain, double xM, double yM) {
        return new Point(xM, yM, terrain.heightM(xM, yM));
    }

    private static List<Point> places(double eastM, double northM, Terrain terrain) {
        SplittableRandom chance = new SplittableRandom(5);
        List<Point> places = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            places.add(on(terrain, chance.nextDouble(0, eastM), chance.nextDouble(0, northM)));
        }
        return places;
    }

    private static Asked ask(Scene scene, List<Point> places) {
        for (int i = 0; i < places.size(); i++) {
            scene.food(
                    "food-" + i,
                    places.get(i).xM(),
                    places.get(i).yM(),
                    places.get(i).zM());
        }
        return new Asked(RouteGraph.compile(scene.build(), settings()));
    }

    private static final class Asked {
        private final RouteGraph graph;
        private final Routes routes;

        Asked(RouteGraph graph) {
            this.graph = graph;
            this.routes = new Routes(
                    graph, MoveCosts.of(graph, FEMALE, EnergySettings.standard()), ChoiceSharpness.GROUP.standard());
        }

        int milliJ(int from, int to) {
            return routes.cheapestMilliJ(graph.useHolds(from)[0], to);
        }
    }
}
