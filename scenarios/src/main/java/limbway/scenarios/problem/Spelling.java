package limbway.scenarios.problem;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Guesses which word was meant by one that is not known. */
public final class Spelling {

    private static final int LONGEST = 40;

    private Spelling() {}

    /**
     * The known word nearest to an unknown one.
     *
     * <p>Near means: at most a third of its letters are inserted, deleted, replaced or swapped with a neighbour, and at
     * most three. Of two words equally near the earlier is taken.
     *
     * @param word the unknown word
     * @param known words that would be right, in an order that decides ties
     * @return the nearest word, or empty if none is near
     */
    public static Optional<String> nearest(String word, Collection<String> known) {
        if (word.length() > LONGEST) {
            return Optional.empty();
        }
        int least = Math.min(3, word.length() / 3) + 1;
        String best = null;
        for (String candidate : known) {
            if (Math.abs(candidate.length() - word.length()) < least) {
                int distance = distance(word.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
                if (distance < least) {
                    least = distance;
                    best = candidate;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** Edit distance with swaps of neighbours (optimal string alignment), by the usual table. */
    static int distance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                } else {
                    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                    cost[i][j] = Math.min(cost[i - 1][j - 1] + change, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
                    if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                        cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 1);
                    }
                }
            }
        }
        return cost[a.length()][b.length()];
    }
}
