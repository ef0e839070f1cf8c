package limbway.reports.replay;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import limbway.model.geometry.Point;
import limbway.model.graph.RouteGraph;
import limbway.model.route.Way;
import limbway.model.study.Study;
import limbway.reports.FullYard;
import limbway.reports.Yard;
import limbway.reports.measure.Measures;
import limbway.reports.measure.RouteCard;
import limbway.reports.measure.RouteCards;
import limbway.reports.scene.PaintedMesh;
import limbway.reports.scene.PaintedMeshes;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Everything is read back from the text as a stranger would, and compared with the journal. */
class ReplayDataTest {

    /** Times are told in steps of 10 ms. */
    private static final double STEP_MS = 10;

    private static Measures measures;
    private static RouteCards cards;
    private static String text;
    private static JsonNode layout;
    private static JsonNode film;

    @BeforeAll
    static void write() throws IOException {
        Study study = Yard.study();
        measures = Yard.measures(study.base(), study.animals());
        cards = RouteCards.withoutFlips(measures.outcome());
        text = json(measures, cards);
        layout = new ObjectMapper().readTree(text).at("/layouts/0");
        film = layout.get("film");
    }

    private static String json(Measures of, RouteCards with) {
        return ReplayData.json("Yard", List.of(ReplayLayout.of(of, with, "yard.yaml")));
    }

    private static Journal journal() {
        return measures.outcome().journals().get(0);
    }

    private static Point place(double[] row, int at) {
        JsonNode origin = layout.get("origin");
        double step = layout.get("stepM").asDouble();
        double x = origin.get(0).asDouble() + step * row[3 * at];
        double y = origin.get(1).asDouble() + step * row[3 * at + 1];
        double z = origin.get(2).asDouble() + step * row[3 * at + 2];
        return new Point(x, -z, y);
    }

    /** Half a step along each axis is the most that rounding can move a place. */
    private static double quantumM() {
        return Math.sqrt(3) * layout.get("stepM").asDouble() / 2 + 1e-9;
    }

    @Test
    void eachTripIsThereWithItsTimesAndGoesTheWayOfTheJournalPlaceByPlace() {
        RouteGraph graph = measures.outcome().habitat().graph();
        double[] start = RowsRead.of(film.at("/ways/start"));
        double[] hold = RowsRead.of(film.at("/ways/hold"));
        double[] ms = RowsRead.of(film.at("/ways/ms"));
        double[] mode = RowsRead.of(film.at("/ways/mode"));
        double[] holds = RowsRead.of(film.get("holds"));
        double[] ofTrip = RowsRead.of(film.at("/trips/way"));
        double[] startMs = RowsRead.of(film.at("/trips/startMs"));
        double[] animal = RowsRead.of(film.at("/trips/animal"));
        double[] to = RowsRead.of(film.at("/trips/to"));
        List<Trip> trips = journal().trips();
        assertTrue(trips.size() > 100, "trips = " + trips.size());
        assertEquals(trips.size(), ofTrip.length);
        for (int t = 0; t < ofTrip.length; t++) {
            Trip trip = trips.get(t);
            Way way = trip.way();
            assertEquals(trip.animal(), (int) animal[t]);
            assertEquals(trip.toResource(), (int) to[t]);
            assertEquals((double) trip.startMs(), startMs[t] * STEP_MS, STEP_MS / 2);
            int first = (int) start[(int) ofTrip[t]];
            int end = (int) start[(int) ofTrip[t] + 1];
            assertEquals(way.holds().size(), end - first);
            double lastsMs = 0;
            for (int i = first; i < end; i++) {
                Point told = place(holds, (int) hold[i]);
                Point lived = graph.place(way.holds().get(i - first));
                assertTrue(told.distanceM(lived) <= quantumM(), told + " for " + lived);
                lastsMs += ms[i] * STEP_MS;
                if (i > first) {
                    int move = way.moves().get(i - first - 1);
                    assertEquals(graph.mode(move).ordinal(), (int) mode[i] & 127);
                    assertEquals(graph.moveOnGround(move), ((int) mode[i] & 128) != 0);
                }
            }
            // the parts of the way add up to it, whatever their number: half a step, and half a millisecond of the
            // journal
            assertEquals((double) (trip.endMs() - trip.startMs()), lastsMs, STEP_MS / 2 + 0.5, "trip " + t);
        }
    }

    @Test
    void eachStayIsThereWhereAndWhenItWas() {
        RouteGraph graph = measures.outcome().habitat().graph();
        double[] holds = RowsRead.of(film.get("holds"));
        double[] hold = RowsRead.of(film.at("/stays/hold"));
        double[] startMs = RowsRead.of(film.at("/stays/startMs"));
        double[] endMs = RowsRead.of(film.at("/stays/endMs"));
        double[] waiting = RowsRead.of(film.at("/stays/waiting"));
        double[] place = RowsRead.of(film.at("/stays/place"));
        List<Stay> stays = journal().stays();
        assertEquals(stays.size(), hold.length);
        for (int s = 0; s < hold.length; s++) {
            Stay stay = stays.get(s);
            assertEquals((double) stay.startMs(), startMs[s] * STEP_MS, STEP_MS / 2);
            assertEquals((double) stay.endMs(), endMs[s] * STEP_MS, STEP_MS / 2);
            assertEquals(stay.waiting(), waiting[s] == 1);
            assertEquals(stay.resource(), (int) place[s]);
            assertTrue(place(holds, (int) hold[s]).distanceM(graph.place(stay.hold())) <= quantumM());
        }
    }

    @Test
    void theCardOfATripIsOfItsBodyAndItsPlaces() {
        double[] cardOf = RowsRead.of(film.at("/trips/card"));
        int withCard = 0;
        for (int t = 0; t < cardOf.length; t++) {
            Trip trip = journal().trips().get(t);
            if (cardOf[t] != Film.NO_CARD) {
                JsonNode card = layout.at("/cards/" + (int) cardOf[t]);
                assertEquals(layout.at("/places/" + trip.fromResource() + "/id"), card.get("from"));
                assertEquals(layout.at("/places/" + trip.toResource() + "/id"), card.get("to"));
                assertEquals(layout.at("/animals/" + trip.animal() + "/body"), card.get("body"));
                withCard++;
            }
        }
        assertTrue(withCard > cardOf.length / 2, "trips with a card = " + withCard);
    }

    @Test
    void theTripsOfTheCardsAreThoseOfAllRepetitionsAndTheirWaysAreInTheFilm() {
        int told = 0;
        for (int c = 0; c < cards.cards().size(); c++) {
            RouteCard card = cards.cards().get(c);
            JsonNode entry = layout.at("/cards/" + c);
            told += entry.at("/taken/above").asInt() + entry.at("/taken/ground").asInt();
            for (JsonNode way : entry.get("ways")) {
                Way of = "above".equals(way.get("kind").asText())
                        ? card.ways().offGround().orElseThrow()
                        : card.ways().overGround().orElseThrow();
                long parts = 0;
                for (JsonNode part : way.get("parts")) {
                    parts += part.get("milliJ").asLong();
                }
                assertEquals(of.milliJ(), parts);
                assertEquals(of.milliJ(), way.get("milliJ").asLong());
                double[] start = RowsRead.of(film.at("/ways/start"));
                int row = way.get("way").asInt();
                assertEquals(of.holds().size(), (int) (start[row + 1] - start[row]));
            }
        }
        long without = measures.outcome().journals().stream()
                .flatMap(journal -> journal.trips().stream())
                .filter(trip -> cards.numberOf(trip).isEmpty())
                .count();
        long all = measures.outcome().journals().stream()
                .mapToLong(journal -> journal.trips().size())
                .sum();
        assertEquals(all - without, told);
        assertEquals(cards.leftOut(), layout.get("cardsLeftOut").asInt());
        double last = Double.POSITIVE_INFINITY;
        for (RouteCard card : cards.cards()) {
            assertTrue(card.groundM() <= last, "most metres on the ground first");
            last = card.groundM();
        }
    }

    @Test
    void thePartsAreTheMeshesOfTheSceneAndEachThingIsOneRunOfThem() {
        List<PaintedMesh> meshes =
                PaintedMeshes.of(measures.outcome().habitat().layout().enclosure());
        assertEquals(meshes.size(), layout.get("parts").size());
        for (int p = 0; p < meshes.size(); p++) {
            PaintedMesh mesh = meshes.get(p);
            JsonNode part = layout.at("/parts/" + p);
            double[] places = RowsRead.of(part.get("places"));
            double[] indices = RowsRead.of(part.get("indices"));
            assertEquals(mesh.indices().length, indices.length);
            for (int i = 0; i < indices.length; i++) {
                int vertex = mesh.indices()[i];
                Point meant = new Point(
                        mesh.places()[3 * vertex], -mesh.places()[3 * vertex + 2], mesh.places()[3 * vertex + 1]);
                assertTrue(place(places, (int) indices[i]).distanceM(meant) <= quantumM());
            }
            int next = 0;
            for (JsonNode thing : part.get("things")) {
                assertEquals(next, thing.get("first").asInt());
                next += thing.get("count").asInt();
            }
            assertEquals(indices.length, next);
            if (part.has("normals")) {
                assertEquals(places.length, RowsRead.of(part.get("normals")).length);
            }
        }
    }

    @Test
    void theSunStandsInTheSouthOrNorthAtItsHighestAndIsBelowAtMidnight() {
        JsonNode elevation = layout.at("/sun/elevationDeg");
        assertEquals(145, elevation.size());
        assertTrue(elevation.get(0).asDouble() < -50 && elevation.get(144).asDouble() < -50);
        int highest = 0;
        for (int i = 0; i < elevation.size(); i++) {
            highest = elevation.get(i).asDouble() > elevation.get(highest).asDouble() ? i : highest;
        }
        // 110.5 degrees east is 22 hours and 38 minutes from the clock of 120 degrees: the sun culminates at about
        // 12:45
        assertEquals(12.75 * 6, highest, 2);
    }

    @Test
    void theUseOfPlacesIsThatOfTheMeasures() {
        double[] ground = RowsRead.of(layout.at("/use/ground/secondsPerAnimalDay"));
        // floats hold seven digits
        assertEquals(
                measures.use().ground().totalSecondsPerAnimalDay(),
                Arrays.stream(ground).sum(),
                1e-3);
        assertEquals(
                measures.use().supports().size(), layout.at("/use/supports").size());
    }

    @Test
    void theSameRunGivesTheSameBytes() {
        Study study = Yard.study();
        Measures again = Yard.measures(study.base(), study.animals());
        assertEquals(text, json(again, RouteCards.withoutFlips(again.outcome())));
    }

    @Test
    void noMarkupCanBeginInTheData() {
        assertFalse(text.contains("<"));
        assertFalse(text.contains("\n"));
    }

    @Test
    void everythingThatCanStandInAYardHasAPaintAndAnOutline() {
        List<String> kinds = new ArrayList<>();
        PaintedMeshes.of(FullYard.shaded()).forEach(mesh -> mesh.things().forEach(thing -> kinds.add(thing.id())));
        new PlanShapes(FullYard.shaded())
                .outlines()
                .forEach(outline -> assertTrue(kinds.contains(outline.get("id")), outline.toString()));
        new PlanShapes(FullYard.shaded())
                .axes()
                .forEach(axis -> assertTrue(kinds.contains(axis.get("id")), axis.toString()));
    }
}
