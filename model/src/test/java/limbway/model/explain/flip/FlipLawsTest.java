package limbway.model.explain.flip;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.explain.flip.AskedTrips.Answer;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.scene.RandomEnclosure;
import limbway.model.scene.Scene;

import static limbway.model.explain.flip.AskedTrips.LESS;
import static limbway.model.explain.flip.AskedTrips.ask;
import static limbway.model.explain.flip.AskedTrips.assertTight;
import static limbway.model.explain.flip.AskedTrips.turns;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What holds wherever a trip is turned: every change that is named is made again. */
class FlipLawsTest {

    /** Whatever stands there: what is named turns the trip, and less of it does not. */
    @Test
    void whatIsNamedInRandomYardsTurnsTheTripAndLessDoesNot() {
        int flips = 0;
        int tight = 0;
        List<String> kinds = new ArrayList<>();
        for (long seed = 1; seed <= 5; seed++) {
            for (String[] trip : new String[][] {{"tray", "pool"}, {"nest", "hatch"}}) {
                Answer answer = ask(RandomEnclosure.of(seed), trip[0], trip[1]);
                flips += answer.found().flips().size();
                answer.found()
                        .flips()
                        .forEach(flip -> kinds.add(flip.change().getClass().getSimpleName()));
                tight += assertTight(answer, "seed " + seed + " from " + trip[0]);
            }
        }
        assertTrue(flips >= 8 && tight >= 4, flips + " flips, " + tight + " with a size: " + kinds);
        assertTrue(Set.copyOf(kinds).size() >= 3, kinds.toString());
    }

    /** No rope between the same two things that is a fiftieth shorter turns the trip, wherever it is tied. */
    @Test
    void noShorterRopeBetweenTheSameThingsTurnsTheTrip() {
        int looked = 0;
        for (long seed = 1; seed <= 8 && looked < 1; seed++) {
            Answer answer = ask(RandomEnclosure.of(seed), "tray", "pool");
            for (LinkAdded link : answer.changes(LinkAdded.class)) {
                looked++;
                assertNoShorter(answer, link, "seed " + seed);
            }
        }
        assertTrue(looked > 0, "no rope was named");
    }

    /** Two bars that lean towards each other: higher up a rope is shorter, but the way up to it is dearer than the ground. */
    @Test
    void betweenLeaningBarsShorterRopesHigherUpDoNotTurnTheTrip() {
        Enclosure enclosure = Scene.yard(30, 10)
                .add(leaning("west", 2, 5))
                .add(leaning("east", 14, 11))
                .resource("nest", ResourceKind.NEST, new Point(3, 5, 2), "west")
                .resource("tray", ResourceKind.FOOD, new Point(13, 5, 2), "east")
                .build();
        Answer answer = ask(enclosure, "nest", "tray");
        List<LinkAdded> links = answer.changes(LinkAdded.class);
        assertEquals(1, links.size(), answer.found().toString());
        assertTrue(assertNoShorter(answer, links.get(0), "leaning bars") > 0, links.toString());
    }

    private static Support leaning(String id, double footM, double topM) {
        return new Support(
                id,
                SupportKind.BEAM,
                Polyline.straight(new Point(footM, 5, 0), new Point(topM, 5, 6)),
                0.08,
                Material.GALVANISED_STEEL);
    }

    /** How many shorter ropes were hung in vain; of some pairs of places there is none. */
    private static int assertNoShorter(Answer answer, LinkAdded link, String where) {
        Enclosure enclosure = answer.question().enclosure();
        int tried = 0;
        for (Spot from : spots(enclosure, link.from())) {
            for (Spot to : spots(enclosure, link.to())) {
                LinkAdded other = new LinkAdded(link.id(), from, to, 0);
                double lengthM = from.in(enclosure)
                        .orElseThrow()
                        .distanceM(to.in(enclosure).orElseThrow());
                if (lengthM > 0.05 && lengthM <= LESS * link.amountM()) {
                    tried++;
                    assertFalse(
                            turns(answer.question(), other.in(enclosure).orElseThrow()),
                            where + ": " + link + ", but also " + other);
                }
            }
        }
        return tried;
    }

    /** Places round one, a third of a metre apart. */
    private static List<Spot> spots(Enclosure enclosure, Spot round) {
        List<Spot> all = new ArrayList<>();
        for (int i = -4; i <= 4; i++) {
            double byM = i * 0.3;
            Spot spot = round instanceof Spot.AtHeight height
                    ? new Spot.AtHeight(height.on(), height.heightM() + byM)
                    : round instanceof Spot.Along along ? new Spot.Along(along.on(), along.alongM() + byM) : round;
            if (spot.in(enclosure).isPresent()) {
                all.add(spot);
            }
        }
        return all;
    }
}
