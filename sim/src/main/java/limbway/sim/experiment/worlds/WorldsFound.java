package limbway.sim.experiment.worlds;

import java.util.List;
import java.util.Optional;

import limbway.sim.experiment.screening.Factor;

/**
 * What came of comparing layouts in plausible worlds.
 *
 * @param settings how many worlds and how closely
 * @param inputs what differs between the worlds
 * @param layouts names of the layouts
 * @param criteria names of what they are compared by, the one whose reversals were looked for first
 * @param worlds worlds that were lived in, by their number
 * @param refused worlds that the model refuses
 * @param pairs each pair of layouts by each criterion, as far as enough worlds tell of it
 * @param totals total indices of the strongest inputs of the first pair by the first criterion; empty where not asked for
 */
public record WorldsFound(
        WorldSettings settings,
        List<Factor> inputs,
        List<String> layouts,
        List<String> criteria,
        List<World> worlds,
        List<Refused> refused,
        List<PairFound> pairs,
        List<TotalEffect> totals) {

    /**
     * A world that the model refuses.
     *
     * @param number which of the worlds drawn, from 1
     * @param why what the model says
     */
    public record Refused(int number, String why) {}

    /** Keeps copies of the lists. */
    public WorldsFound {
        inputs = List.copyOf(inputs);
        layouts = List.copyOf(layouts);
        criteria = List.copyOf(criteria);
        worlds = List.copyOf(worlds);
        refused = List.copyOf(refused);
        pairs = List.copyOf(pairs);
        totals = List.copyOf(totals);
    }

    /**
     * One of the pairs.
     *
     * @param a number of a layout
     * @param b number of another, greater
     * @param criterion number of a criterion
     * @return what was found; empty where too few worlds tell
     */
    public Optional<PairFound> pair(int a, int b, int criterion) {
        return pairs.stream()
                .filter(pair -> pair.a() == a && pair.b() == b && pair.criterion() == criterion)
                .findFirst();
    }
}
