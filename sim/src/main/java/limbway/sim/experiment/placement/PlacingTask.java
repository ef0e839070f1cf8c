package limbway.sim.experiment.placement;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

import limbway.model.alteration.FreeNames;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.ResourceKind;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;

/**
 * What is to be placed.
 *
 * @param kind what it is gone to for
 * @param ids ids of the places: those that are moved, or free ones for those that are added; at least one
 * @param adds whether the places are added, not moved
 * @param decks free ids of decks of their own to lie on, one for each added place; empty if they come without
 */
public record PlacingTask(ResourceKind kind, List<String> ids, boolean adds, List<String> decks) {

    /** Sides of a deck that comes with a place: room for one to lie and one to pass, an assumption [m]. */
    public static final double DECK_EAST_M = 2;

    /** See {@link #DECK_EAST_M} [m]. */
    public static final double DECK_NORTH_M = 1.5;

    /** Keeps copies of the lists. */
    public PlacingTask {
        ids = List.copyOf(ids);
        decks = List.copyOf(decks);
        if (ids.isEmpty() || !(decks.isEmpty() || (adds && decks.size() == ids.size()))) {
            throw new IllegalArgumentException("placing: ids = " + ids + ", decks = " + decks
                    + ", allowed one place or more, and a deck for each that is added or for none");
        }
    }

    /**
     * Places are moved.
     *
     * @param kind their kind
     * @param ids their ids, at least one
     * @return the task
     */
    public static PlacingTask moving(ResourceKind kind, List<String> ids) {
        return new PlacingTask(kind, ids, false, List.of());
    }

    /**
     * Places are added, under names that nothing there has.
     *
     * @param kind their kind
     * @param count how many, 1 or more
     * @param withDeck whether each comes with a deck of its own to lie on
     * @param enclosure what stands there
     * @return the task
     */
    public static PlacingTask adding(ResourceKind kind, int count, boolean withDeck, Enclosure enclosure) {
        String stem = "new-" + kind.name().toLowerCase(Locale.ROOT);
        return new PlacingTask(
                kind, names(enclosure, stem, count), true, withDeck ? names(enclosure, "new-deck", count) : List.of());
    }

    private static List<String> names(Enclosure enclosure, String stem, int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> FreeNames.of(enclosure, stem, i))
                .toList();
    }

    /**
     * Places that are moved.
     *
     * @return their ids; none if places are added
     */
    public List<String> moved() {
        return adds ? List.of() : ids;
    }

    /**
     * Whether each added place comes with a deck of its own.
     *
     * @return true with decks
     */
    public boolean withDeck() {
        return !decks.isEmpty();
    }

    /**
     * How many places are looked for.
     *
     * @return 1 or more
     */
    public int count() {
        return ids.size();
    }

    /**
     * The deck that comes with a place.
     *
     * @param id its id
     * @param at where its middle is
     * @return a deck of the usual size
     */
    static Platform deck(String id, Point at) {
        Outline outline = Outline.rectangle(
                at.xM() - DECK_EAST_M / 2,
                at.yM() - DECK_NORTH_M / 2,
                at.xM() + DECK_EAST_M / 2,
                at.yM() + DECK_NORTH_M / 2);
        return new Platform(id, outline, at.zM());
    }
}
