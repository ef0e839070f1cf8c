package limbway.reports.measure;

import java.util.List;
import java.util.OptionalInt;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import limbway.model.explain.flip.Flip;
import limbway.model.study.Study;
import limbway.reports.Yard;
import limbway.sim.experiment.Outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

class RouteCardsTest {

    private static Outcome outcome;
    private static RouteCards cards;

    @BeforeAll
    static void make() {
        Study study = Yard.study();
        outcome = Yard.measures(study.find("one link missing").orElseThrow(), study.animals())
                .outcome();
        cards = RouteCards.of(outcome);
    }

    @Test
    void changesAreLookedForOnTheFirstCardsAndNoOthers() {
        List<RouteCard> all = cards.cards();
        long asked = all.stream().filter(RouteCard::flipAsked).count();
        assertTrue(asked >= 1 && asked <= 5, "asked = " + asked);
        for (int c = 0; c < all.size(); c++) {
            assertEquals(c < asked, all.get(c).flipAsked());
            assertFalse(all.get(c).flip().isPresent() && !all.get(c).flipAsked());
        }
    }

    @Test
    void theChangeOfACardTurnsItsTrip() {
        RouteCard card = cards.cards().stream()
                .filter(c -> c.flip().isPresent())
                .findFirst()
                .orElseThrow();
        Flip flip = card.flip().orElseThrow();
        assertTrue(flip.then().offGroundMilliJ() <= flip.then().overGroundMilliJ());
        TripExplainer explainer = new TripExplainer(outcome.habitat(), card.body(), OptionalInt.empty());
        assertEquals(
                card.flip(),
                SmallestFlip.of(outcome.habitat(), explainer.question(card.from(), card.to()), card.reason()));
        assertEquals(card, cards.find(card.body(), card.from(), card.to()).orElseThrow());
    }

    @Test
    void aGroundMetreOfTheRunIsOnACardOrLeftOut() {
        double onCards = cards.cards().stream().mapToDouble(RouteCard::groundM).sum();
        double withCard = outcome.journals().stream()
                .flatMap(journal -> journal.trips().stream())
                .filter(trip -> cards.numberOf(trip).isPresent())
                .mapToDouble(trip -> trip.way().lengthM() - trip.way().offGroundM())
                .sum();
        // the same numbers added in another order
        assertEquals(withCard, onCards, 1e-6);
        assertTrue(onCards > 100);
    }
}
