package limbway.sim.experiment.placement;

import java.util.Comparator;
import java.util.List;

/**
 * Some of the candidates together.
 *
 * @param candidates their numbers, rising
 * @param score what they are judged by, less is better
 */
public record Choice(List<Integer> candidates, double score) {

    /** The best first; of equals the one with the lower numbers. */
    public static final Comparator<Choice> BEST_FIRST =
            Comparator.comparingDouble(Choice::score).thenComparing(Choice::candidates, Choice::compare);

    /** Keeps a copy of the list. */
    public Choice {
        candidates = List.copyOf(candidates);
    }

    private static int compare(List<Integer> a, List<Integer> b) {
        for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
            int order = Integer.compare(a.get(i), b.get(i));
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(a.size(), b.size());
    }
}
