package limbway.sim.experiment.placement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;

/** Keeps the best choices met with, each once. */
final class BestChoices {

    private final int most;
    private final PriorityQueue<Choice> worstFirst = new PriorityQueue<>(Choice.BEST_FIRST.reversed());
    private final Set<List<Integer>> kept = new HashSet<>();

    BestChoices(int most) {
        this.most = most;
    }

    /** Offers a choice, whose numbers may be in any order. */
    void offer(int[] chosen, double score) {
        if (score == Double.POSITIVE_INFINITY
                || (worstFirst.size() == most && score > worstFirst.peek().score())) {
            return;
        }
        Choice choice = new Choice(Arrays.stream(chosen).sorted().boxed().toList(), score);
        if (kept.add(choice.candidates())) {
            worstFirst.add(choice);
            if (worstFirst.size() > most) {
                kept.remove(worstFirst.poll().candidates());
            }
        }
    }

    List<Choice> list() {
        List<Choice> all = new ArrayList<>(worstFirst);
        all.sort(Choice.BEST_FIRST);
        return all;
    }
}
