package limbway.sim.experiment.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

import limbway.model.alteration.Alteration;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.geometry.Outline;
import limbway.model.study.Variant;

/**
 * Places, each with the candidate where it is put.
 *
 * @param task what is placed
 * @param spots where, in the order of {@link PlacingTask#ids}
 */
public record Placing(PlacingTask task, List<Candidate> spots) {

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
        return String.join(" + ", spots.stream().map(Candidate::words).toList());
    }

    /**
     * The changes of the layout, in order.
     *
     * @param base the layout before
     * @return one or two for each place
     */
    public List<Alteration> alterations(Variant base) {
        List<Alteration> all = new ArrayList<>();
        for (int i = 0; i < spots.size(); i++) {
            Candidate spot = spots.get(i);
            String id = task.ids().get(i);
            if (!task.moved().isEmpty()) {
                all.add(new Alteration.ResourceMoved(id, spot.at(), spot.on()));
            } else if (task.withDeck()) {
                double x = spot.at().xM();
                double y = spot.at().yM();
                Platform deck = new Platform(
                        deck(i),
                        Outline.rectangle(
                                x - PlacingTask.DECK_EAST_M / 2,
                                y - PlacingTask.DECK_NORTH_M / 2,
                                x + PlacingTask.DECK_EAST_M / 2,
                                y + PlacingTask.DECK_NORTH_M / 2),
                        spot.at().zM());
                all.add(new Alteration.PlatformAdded(deck));
                all.add(new Alteration.ResourceAdded(
                        new Resource(id, task.kind(), deck.centre(), deck(i), stalls(base))));
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
        if (task.added() == 0 || task.kind() != ResourceKind.FOOD) {
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
     * What to write under {@code changes} of a scenario to get the same layout.
     *
     * @param base the layout before
     * @return one line for each change
     */
    public List<String> lines(Variant base) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < spots.size(); i++) {
            String id = task.ids().get(i);
            if (!task.moved().isEmpty()) {
                lines.add("{move: " + id + ", " + spots.get(i).entry() + "}");
                continue;
            }
            String on = spots.get(i).entry();
            if (task.withDeck()) {
                lines.add("{add: {platform: " + deck(i) + ", " + on + ", size: [" + PlacingTask.DECK_EAST_M + ", "
                        + PlacingTask.DECK_NORTH_M + "]}}");
                on = "on: " + deck(i);
            }
            lines.add("{add: {" + task.kind().word() + ": " + id + ", " + on + ", portions: " + stalls(base)
                    + " at once}}");
        }
        if (task.added() > 0 && task.kind() == ResourceKind.FOOD) {
            lines.addAll(SharedFood.lines(base.keeping(), task.ids()));
        }
        return List.copyOf(lines);
    }

    private static String deck(int place) {
        return "new-deck-" + (place + 1);
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
