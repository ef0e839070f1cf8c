package limbway.sim.experiment.placement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Predicate;

/** Keeps the best choices met with, each once, and of those that are much the same only the best few. */
final class BestChoices {

    private final int most;
    private final int alike;
    private final int[] kinds;
    private final Predicate<int[]> wanted;
    private final TreeSet<Choice> all = new TreeSet<>(Choice.BEST_FIRST);
    private final Map<List<Integer>, TreeSet<Choice>> byKind = new HashMap<>();

    BestChoices(int most) {
        this(most, most, new int[0], rising -> true);
    }

    /**
     * Sets up a list.
     *
     * @param most how many are kept, 1 or more
     * @param alike how many are kept of which the candidates are of the same kinds, 1 or more
     * @param kinds kind of each candidate; empty if they are all of one
     * @param wanted which choices may be kept, asked with rising numbers
     */
    BestChoices(int most, int alike, int[] kinds, Predicate<int[]> wanted) {
        this.most = most;
        this.alike = alike;
        this.kinds = kinds.clone();
        this.wanted = wanted;
    }

    /** Offers a choice, whose numbers may be in any order. */
    void offer(int[] chosen, double score) {
        if (score == Double.POSITIVE_INFINITY
                || (all.size() == most && score > all.last().score())) {
            return;
        }
        int[] rising = chosen.clone();
        Arrays.sort(rising);
        Choice choice = new Choice(Arrays.stream(rising).boxed().toList(), score);
        if (all.contains(choice) || !wanted.test(rising)) {
            return;
        }
        TreeSet<Choice> same = byKind.computeIfAbsent(kind(rising), kind -> new TreeSet<>(Choice.BEST_FIRST));
        if (same.size() == alike) {
            if (Choice.BEST_FIRST.compare(choice, same.last()) > 0) {
                return;
            }
            all.remove(same.pollLast());
        }
        same.add(choice);
        all.add(choice);
        if (all.size() > most) {
            Choice worst = all.pollLast();
            byKind.get(kind(worst.candidates().stream().mapToInt(c -> c).toArray()))
                    .remove(worst);
        }
    }

    private List<Integer> kind(int[] rising) {
        return kinds.length == 0
                ? List.of()
                : Arrays.stream(rising).map(c -> kinds[c]).sorted().boxed().toList();
    }

    List<Choice> list() {
        return new ArrayList<>(all);
    }
}
