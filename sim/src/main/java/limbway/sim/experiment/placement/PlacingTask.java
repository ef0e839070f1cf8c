package limbway.sim.experiment.placement;

import java.util.List;
import java.util.Locale;

import limbway.model.enclosure.ResourceKind;

/**
 * What is to be placed.
 *
 * @param kind what it is gone to for
 * @param moved ids of places that are moved, all of that kind; empty if places are added
 * @param added how many places are added, 0 if places are moved
 * @param withDeck whether each added place comes with a deck of its own to lie on
 */
public record PlacingTask(ResourceKind kind, List<String> moved, int added, boolean withDeck) {

    /** Sides of a deck that comes with a place: room for one to lie and one to pass, an assumption [m]. */
    public static final double DECK_EAST_M = 2;

    /** See {@link #DECK_EAST_M} [m]. */
    public static final double DECK_NORTH_M = 1.5;

    /** Keeps a copy of the list. */
    public PlacingTask {
        moved = List.copyOf(moved);
        if (moved.isEmpty() == (added == 0)) {
            throw new IllegalArgumentException(
                    "placing: moved = " + moved + ", added = " + added + ", allowed one of the two");
        }
    }

    /**
     * How many places are looked for.
     *
     * @return 1 or more
     */
    public int count() {
        return moved.isEmpty() ? added : moved.size();
    }

    /**
     * Ids of the places.
     *
     * @return those that are moved, or new ones that no scenario uses by chance: new-food-1
     */
    public List<String> ids() {
        if (!moved.isEmpty()) {
            return moved;
        }
        String stem = "new-" + kind.name().toLowerCase(Locale.ROOT) + "-";
        return java.util.stream.IntStream.rangeClosed(1, added)
                .mapToObj(i -> stem + i)
                .toList();
    }
}
