package limbway.model.graph;

import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.ResourceKind;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Point;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

@Tag("derived")
class DecksTest {

    private static final Body FEMALE =
            BodyCatalogue.standard().find("adult female").orElseThrow();

    // sums of a few lengths, so only rounding in the last digits may differ
    private static final double ROUNDING_M = 1e-9;

    /** Decks side by side, 0.5 m apart: 1 m to the edge, 0.5 m over the gap, 1 m on, anywhere along their 10 m. */
    @Test
    void stepsAcrossBetweenDecksWhereTheyLieSideBySide() {
        Scene scene = Scene.yard(20, 20)
                .deck("a", 5, 5, 15, 7, 3)
                .deck("b", 5, 7.5, 15, 9.5, 3)
                .resource("food", ResourceKind.FOOD, new Point(10, 6, 3), "a")
                .resource("nest", ResourceKind.NEST, new Point(10, 8.5, 3), "b");
        assertEquals(2.5, offGroundM(scene), ROUNDING_M);
    }

    /** One deck crosses 0.5 m above another, and no corner of either is near the other: down where the edges cross. */
    @Test
    void stepsDownFromADeckToOneThatItCrosses() {
        Scene scene = Scene.yard(20, 20)
                .deck("low", 5, 9.5, 15, 10.5, 2)
                .deck("high", 9.5, 5, 10.5, 15, 2.5)
                .resource("food", ResourceKind.FOOD, new Point(6, 10, 2), "low")
                .resource("nest", ResourceKind.NEST, new Point(10, 14, 2.5), "high");
        double alongEachM = Math.sqrt(0.5 * 0.5 + 3.5 * 3.5);
        assertEquals(alongEachM + 0.5 + alongEachM, offGroundM(scene), ROUNDING_M);
    }

    /** The rope hangs 1 m below the middle of a deck, 4 m from its edges: nobody climbs through the boards. */
    @Test
    void doesNotReachUpThroughADeck() {
        Scene scene = Scene.yard(20, 20)
                .deck("deck", 6, 6, 14, 14, 3)
                .rope("rope", new Point(8, 10, 2), new Point(12, 10, 2))
                .resource("food", ResourceKind.FOOD, new Point(10, 10, 3), "deck")
                .resource("nest", ResourceKind.NEST, new Point(10, 10, 2), "rope");
        assertInstanceOf(Search.Unreachable.class, search(scene));
    }

    /** The same rope led on beyond the edge: along it for 4 m, up to the edge, and 4 m back over the deck. */
    @Test
    void climbsOntoADeckByItsEdge() {
        Scene scene = Scene.yard(20, 20)
                .deck("deck", 6, 6, 14, 14, 3)
                .rope("rope", new Point(10, 10, 2), new Point(16, 10, 2))
                .resource("food", ResourceKind.FOOD, new Point(10, 10, 3), "deck")
                .resource("nest", ResourceKind.NEST, new Point(10, 10, 2), "rope");
        double lengthM = offGroundM(scene);
        assertTrue(lengthM > 8 && lengthM <= 9 + ROUNDING_M, () -> "length " + lengthM);
    }

    /** A deck lies between two ropes 1 m apart: the gap is within reach, the boards are in the way. */
    @Test
    void doesNotReachFromRopeToRopeThroughADeck() {
        Scene scene = Scene.yard(20, 20)
                .deck("deck", 6, 6, 14, 14, 3)
                .rope("low", new Point(9, 10, 2.5), new Point(11, 10, 2.5))
                .rope("high", new Point(10, 9, 3.5), new Point(10, 11, 3.5))
                .resource("food", ResourceKind.FOOD, new Point(10, 10, 3.5), "high")
                .resource("nest", ResourceKind.NEST, new Point(10, 10, 2.5), "low");
        assertInstanceOf(Search.Unreachable.class, search(scene));
    }

    /** Something that hangs 0.5 m below the middle of a deck is not used from the deck, but from the ground below. */
    @Test
    void doesNotUseThroughTheBoardsWhatHangsBelowThem() {
        Scene scene = Scene.yard(20, 20)
                .deck("deck", 6, 6, 14, 14, 1)
                .resource("food", ResourceKind.FOOD, new Point(10, 10, 0.5), "")
                .resource("nest", ResourceKind.NEST, new Point(10, 10, 1), "deck");
        Search.Reached ways = assertInstanceOf(Search.Reached.class, search(scene));
        assertTrue(ways.offGround().isEmpty());
    }

    private static double offGroundM(Scene scene) {
        return assertInstanceOf(Search.Reached.class, search(scene))
                .offGround()
                .orElseThrow()
                .lengthM();
    }

    private static Search search(Scene scene) {
        RouteGraph graph = RouteGraph.compile(scene.build(), GraphSettings.forBodies(List.of(FEMALE)));
        Routes routes = new Routes(
                graph, MoveCosts.of(graph, FEMALE, EnergySettings.standard()), ChoiceSharpness.GROUP.standard());
        return routes.find(graph.useHolds(1)[0], 0);
    }
}
