package limbway.sim.experiment.placement;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Looks for good choices where there are too many to judge all: adds one candidate after the other, each time the best, then
 * exchanges single ones as long as that helps; from several beginnings.
 *
 * <p>The first candidate of each beginning is taken from those that are good alone to those that are not, at equal steps, so
 * nothing is left to chance.
 *
 * @source Teitz and Bart 1968, Oper. Res. 16:955-961, doi 10.1287/opre.16.5.955, for the exchange (from memory)
 * @validity no bound on how far the result is from the best; on random yards see docs/validation.md
 */
public final class SwapSearch {

    private final DemandTable table;
    private final Together together;
    private final int count;
    private final BestChoices best;
    private long judged;

    private SwapSearch(DemandTable table, Together together, int count, BestChoices best) {
        this.table = table;
        this.together = together;
        this.count = count;
        this.best = best;
    }

    /**
     * Looks for good choices.
     *
     * @param table demands and candidates
     * @param together which may be chosen together
     * @param count how many are chosen, 1 to the number of candidates
     * @param keep how many of the best are kept
     * @param beginnings how many beginnings, 1 or more
     * @return the best choices met with; none if none was found that is allowed and serves all demands
     */
    public static FullSearch.Found run(DemandTable table, Together together, int count, int keep, int beginnings) {
        return run(table, together, count, new BestChoices(keep), beginnings);
    }

    static FullSearch.Found run(DemandTable table, Together together, int count, BestChoices best, int beginnings) {
        SwapSearch search = new SwapSearch(table, together, count, best);
        int[] first = IntStream.range(0, table.candidates)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer c) -> search.reach(new int[] {c}))
                        .thenComparing(Comparator.naturalOrder()))
                .mapToInt(c -> c)
                .toArray();
        int from = Math.min(beginnings, first.length);
        for (int b = 0; b < from; b++) {
            search.from(first[b * first.length / from]);
        }
        return new FullSearch.Found(search.best.list(), search.judged);
    }

    private void from(int first) {
        int[] chosen = {first};
        while (chosen.length < count) {
            int next = bestAddition(chosen);
            if (next < 0) {
                return;
            }
            chosen = Arrays.copyOf(chosen, chosen.length + 1);
            chosen[chosen.length - 1] = next;
        }
        double score = judge(chosen);
        boolean better = true;
        while (better) {
            better = false;
            int[] at = new int[2];
            double least = score;
            for (int out = 0; out < count; out++) {
                for (int in = 0; in < table.candidates; in++) {
                    double then = fits(chosen, in, out) ? judge(exchanged(chosen, out, in)) : Double.POSITIVE_INFINITY;
                    if (then < least) {
                        least = then;
                        at = new int[] {out, in};
                        better = true;
                    }
                }
            }
            if (better) {
                chosen = exchanged(chosen, at[0], at[1]);
                score = least;
            }
        }
    }

    private int bestAddition(int[] chosen) {
        int next = -1;
        double least = 0;
        for (int c = 0; c < table.candidates; c++) {
            if (!fits(chosen, c, -1)) {
                continue;
            }
            int[] with = Arrays.copyOf(chosen, chosen.length + 1);
            with[chosen.length] = c;
            double then = reach(with);
            if (next < 0 || then < least) {
                next = c;
                least = then;
            }
        }
        return next;
    }

    private boolean fits(int[] chosen, int candidate, int without) {
        for (int i = 0; i < chosen.length; i++) {
            if (chosen[i] == candidate || (i != without && !together.allowed(chosen[i], candidate))) {
                return false;
            }
        }
        return true;
    }

    private static int[] exchanged(int[] chosen, int out, int in) {
        int[] other = chosen.clone();
        other[out] = in;
        return other;
    }

    private double judge(int[] chosen) {
        int[] rising = chosen.clone();
        Arrays.sort(rising);
        double score = table.score(rising);
        judged++;
        best.offer(rising, score);
        return score;
    }

    private double reach(int[] chosen) {
        int[] rising = chosen.clone();
        Arrays.sort(rising);
        return table.score(rising);
    }
}
