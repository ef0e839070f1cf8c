package limbway.model.explain.flip;

import java.util.List;
import java.util.OptionalInt;

import limbway.model.alteration.Alteration;
import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.Enclosure;
import limbway.model.energy.EnergySettings;
import limbway.model.explain.GroundReason;
import limbway.model.explain.GroundReasons;
import limbway.model.explain.PairWays;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.route.Search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Asks what would turn a trip, and tries what is named, and two parts in a hundred less. */
final class AskedTrips {

    private AskedTrips() {}

    static final Body FEMALE = BodyCatalogue.standard().find("adult female").orElseThrow();

    static final double LESS = 0.98;

    record Answer(TripQuestion question, GroundReason reason, FlipAnswer found) {

        <T extends Change> List<T> changes(Class<T> type) {
            return found.flips().stream()
                    .map(Flip::change)
                    .filter(type::isInstance)
                    .map(type::cast)
                    .toList();
        }
    }

    static Answer ask(Enclosure enclosure, String from, String to) {
        return ask(enclosure, from, to, BuildLimits.none());
    }

    static Answer ask(Enclosure enclosure, String from, String to, BuildLimits limits) {
        TripQuestion question = new TripQuestion(
                enclosure,
                GraphSettings.forBodies(List.of(FEMALE)),
                FEMALE,
                EnergySettings.standard(),
                ChoiceSharpness.GROUP.standard(),
                OptionalInt.empty(),
                from,
                to);
        RouteGraph graph = RouteGraph.compile(enclosure, question.settings());
        Routes routes = new Routes(graph, question.costs(graph, question.energy()), question.sharpness());
        int start = graph.resourceNumber(from);
        int end = graph.resourceNumber(to);
        Search search = PairWays.find(routes, routes.sharpness(), start, end);
        GroundReason reason = search instanceof Search.Reached ways
                ? new GroundReasons(enclosure, routes).of(start, end, ways)
                : new GroundReason.OffGroundIsCheapest();
        return new Answer(question, reason, Flips.find(question, graph, reason, limits));
    }

    /** What the trip costs with some alterations. */
    static Search.Reached altered(TripQuestion question, List<Alteration> alterations) {
        Enclosure changed = question.enclosure();
        for (Alteration alteration : alterations) {
            changed = alteration.applyTo(changed);
        }
        RouteGraph graph = RouteGraph.compile(changed, question.settings());
        int end = graph.resourceNumber(question.to());
        Routes routes = Routes.towards(
                graph, MoveCosts.of(graph, question.body(), question.energy()), question.sharpness(), end);
        return (Search.Reached) PairWays.find(routes, question.sharpness(), graph.resourceNumber(question.from()), end);
    }

    static boolean turns(TripQuestion question, List<Alteration> alterations) {
        Search.Reached ways = altered(question, alterations);
        return ways.groundTemptationMilliJ().isPresent()
                && ways.groundTemptationMilliJ().get() <= 0;
    }

    /** Each flip turns the trip, at the cost that it tells, and two parts in a hundred less do not. */
    static int assertTight(Answer answer, String where) {
        int tight = 0;
        for (Flip flip : answer.found.flips()) {
            String what = where + ": " + flip;
            Search.Reached ways = altered(answer.question, flip.alterations());
            assertEquals(
                    flip.then().offGroundMilliJ(),
                    ways.offGround().orElseThrow().milliJ(),
                    what);
            assertEquals(flip.then().cheapestMilliJ(), ways.cheapest().milliJ(), what);
            assertEquals(0, ways.groundTemptationMilliJ().orElseThrow(), what);
            assertTrue(ways.offGroundShare() >= 0.5, what);
            assertEquals(ways.offGroundShare(), flip.share(), what);
            Change change = flip.change();
            boolean sized = !(change instanceof LinkAdded)
                    && !(change instanceof PlaceMoved place && (place.isLowest() || place.at() instanceof Spot.OnDeck));
            if (sized) {
                // below five centimetres two parts in a hundred are less than the millimetre to which sizes are told
                double lessM = Math.min(LESS * change.amountM(), change.amountM() - 0.001);
                Change less = change.withAmount(Math.floor(lessM * 1000) / 1000);
                assertFalse(
                        less.amountM() > 0
                                && less.in(answer.question.enclosure())
                                        .map(alterations -> turns(answer.question, alterations))
                                        .orElse(false),
                        what + " turns with less, too");
                tight++;
            }
        }
        return tight;
    }
}
