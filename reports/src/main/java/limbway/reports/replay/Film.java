package limbway.reports.replay;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import java.util.function.ToLongFunction;

import limbway.model.geometry.Point;
import limbway.sim.experiment.RunSettings;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

/** One repetition, trip by trip and stay by stay. */
final class Film {

    /** Stands for no card. */
    static final int NO_CARD = 65_535;

    private final Journal journal;
    private final WayRows ways;
    private final ToIntFunction<Trip> cardOf;

    /**
     * A film of a journal.
     *
     * @param journal what happened
     * @param ways gathers the ways; may hold others already
     * @param cardOf number of the card of a trip, or {@link #NO_CARD}
     */
    Film(Journal journal, WayRows ways, ToIntFunction<Trip> cardOf) {
        this.journal = journal;
        this.ways = ways;
        this.cardOf = cardOf;
        journal.trips().forEach(trip -> ways.number(trip.animal(), trip.way()));
        journal.stays().forEach(stay -> ways.rowOfHold(stay.hold()));
    }

    /** The places that are needed to show it. */
    List<Point> places() {
        return ways.places();
    }

    Map<String, Object> json(RunSettings settings, PlaceGrid grid) {
        Map<String, Object> film = new LinkedHashMap<>();
        film.put("replication", journal.replication());
        film.put("days", settings.days());
        film.put("date", settings.date().toString());
        film.put("holds", Rows.i16(grid.steps(places())));
        film.put("ways", ways.json());
        film.put("trips", trips());
        film.put("stays", stays());
        return film;
    }

    private Map<String, Object> trips() {
        Map<String, Object> rows = new LinkedHashMap<>();
        rows.put("animal", trips(Trip::animal));
        rows.put("startMs", trips(trip -> hundredths(trip.startMs())));
        rows.put("way", trips(trip -> ways.number(trip.animal(), trip.way())));
        rows.put("from", trips(Trip::fromResource));
        rows.put("to", trips(Trip::toResource));
        rows.put("motive", trips(trip -> trip.motive().ordinal()));
        rows.put("card", trips(cardOf::applyAsInt));
        return rows;
    }

    private Map<String, Object> stays() {
        Map<String, Object> rows = new LinkedHashMap<>();
        rows.put("animal", stays(Stay::animal));
        rows.put("startMs", stays(stay -> hundredths(stay.startMs())));
        rows.put("endMs", stays(stay -> hundredths(stay.endMs())));
        rows.put("hold", stays(stay -> ways.rowOfHold(stay.hold())));
        rows.put("place", stays(Stay::resource));
        rows.put("motive", stays(stay -> stay.motive().ordinal()));
        rows.put("waiting", stays(stay -> stay.waiting() ? 1 : 0));
        return rows;
    }

    private String trips(ToLongFunction<Trip> number) {
        return Rows.unsigned(journal.trips().stream().mapToLong(number).toArray());
    }

    private String stays(ToLongFunction<Stay> number) {
        return Rows.unsigned(journal.stays().stream().mapToLong(number).toArray());
    }

    /** Milliseconds in steps of ten. */
    static long hundredths(long ms) {
        return Math.round(ms / 10.0);
    }
}
