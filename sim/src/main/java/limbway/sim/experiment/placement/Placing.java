package limbway.sim.experiment.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;

import limbway.model.alteration.Alteration;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.study.Variant;

/**
 * Places, each with the candidate where it is put.
 *
 * @param task what is placed
 * @param spots where, in the order of {@link PlacingTask#ids}
 */
public record Placing(PlacingTask task, List<CandidatePlace> spots) {

    /** Keeps a copy of the list. */
    public Placing {
        spots = List.copyOf(spots);
        if (spots.size() != task.count()) {
            throw new IllegalArgumentException("placing: spots = " + spots.size() + ", allowed " + task.count());
        }
    }

    /**
     * What tells this placing from others of the same task.
     *
     * @return the words of all spots
     */
    public String key() {
        return String.join(" + ", spots.stream().map(CandidatePlace::words).toList());
    }

    /**
     * Whether a place stays where it is.
     *
     * @param base the layout before
     * @param place number of the place
     * @return true if it is moved to where it stands already
     */
    public boolean stays(Variant base, int place) {
        return !task.adds() && spots.get(place).isWhere(base, task.ids().get(place));
    }

    /**
     * Whether this changes anything.
     *
     * @param base the layout before
     * @return false if all places stay where they are
     */
    public boolean changes(Variant base) {
        return IntStream.range(0, spots.size()).anyMatch(place -> !stays(base, place));
    }

    /**
     * The changes of the layout, in order.
     *
     * @param base the layout before
     * @return one or two for each place that does not stay
     */
    public List<Alteration> alterations(Variant base) {
        List<Alteration> all = new ArrayList<>();
        for (int i = 0; i < spots.size(); i++) {
            CandidatePlace spot = spots.get(i);
            String id = task.ids().get(i);
            if (stays(base, i)) {
                continue;
            }
            if (!task.adds()) {
                all.add(new Alteration.ResourceMoved(id, spot.at(), spot.on()));
            } else if (task.withDeck()) {
                Platform deck = PlacingTask.deck(task.decks().get(i), spot.at());
                all.add(new Alteration.PlatformAdded(deck));
                all.add(new Alteration.ResourceAdded(
                        new Resource(id, task.kind(), deck.centre(), deck.id(), stalls(base))));
            } else {
                all.add(new Alteration.ResourceAdded(
                        new Resource(id, task.kind(), spot.at(), spot.on(), stalls(base))));
            }
        }
        return all;
    }

    /**
     * The layout with the places there.
     *
     * @param base the layout before
     * @return a layout of its own; food that is fed is shared evenly with places for food that were added
     */
    public Variant applyTo(Variant base) {
        Variant built = Alteration.variant(base, key(), alterations(base));
        if (!task.adds() || task.kind() != ResourceKind.FOOD) {
            return built;
        }
        return new Variant(
                built.name(),
                built.note(),
                built.enclosure(),
                SharedFood.among(base.keeping(), task.ids()),
                new TreeSet<>(built.added()));
    }

    /**
     * What to write under {@code changes} of a scenario to get the same layout, below what made the layout before.
     *
     * @param base the layout before
     * @return one line for each change
     */
    public List<String> lines(Variant base) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < spots.size(); i++) {
            String id = task.ids().get(i);
            String on = spots.get(i).entry();
            if (!task.adds()) {
                if (!stays(base, i)) {
                    lines.add("{move: " + id + ", " + on + "}");
                }
                continue;
            }
            if (task.withDeck()) {
                String deck = task.decks().get(i);
                lines.add("{add: {platform: " + deck + ", " + on + ", size: [" + PlacingTask.DECK_EAST_M + ", "
                        + PlacingTask.DECK_NORTH_M + "]}}");
                on = "on: " + deck;
            }
            lines.add("{add: {" + task.kind().word() + ": " + id + ", " + on + ", portions: " + stalls(base)
                    + " at once}}");
        }
        if (task.adds() && task.kind() == ResourceKind.FOOD) {
            lines.addAll(SharedFood.lines(base.keeping(), task.ids()));
        }
        return List.copyOf(lines);
    }

    /** As many as the roomiest of that kind has; two for resting where there is none, else one. */
    private int stalls(Variant base) {
        Optional<Integer> most = base.enclosure().resources().stream()
                .filter(resource -> resource.kind() == task.kind())
                .map(Resource::stalls)
                .max(Integer::compare);
        boolean shared = task.kind() == ResourceKind.SHADE || task.kind() == ResourceKind.RETREAT;
        return most.orElse(shared ? 2 : 1);
    }
}
