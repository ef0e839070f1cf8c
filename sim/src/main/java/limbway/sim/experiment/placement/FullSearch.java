package limbway.sim.experiment.placement;

import java.util.List;

/** Judges all choices of so many candidates. */
public final class FullSearch {

    private final DemandTable table;
    private final Together together;
    private final int count;
    private final BestChoices best;
    private final int[] chosen;
    private final double[][] cost;
    private final double[][] part;
    private final double[][] whole;
    private long judged;

    private FullSearch(DemandTable table, Together together, int count, BestChoices best) {
        this.table = table;
        this.together = together;
        this.count = count;
        this.best = best;
        this.chosen = new int[count];
        this.cost = new double[count][table.demands];
        this.part = new double[count][table.demands];
        this.whole = new double[count][table.demands];
    }

    /**
     * What was found.
     *
     * @param best the best choices, best first
     * @param judged how many choices were judged
     */
    public record Found(List<Choice> best, long judged) {

        /** Keeps a copy of the list. */
        public Found {
            best = List.copyOf(best);
        }
    }

    /**
     * Judges all of them.
     *
     * @param table demands and candidates
     * @param together which may be chosen together
     * @param count how many are chosen, 1 to the number of candidates
     * @param keep how many of the best are kept
     * @return the best choices; none if no choice is allowed or serves all demands
     */
    public static Found run(DemandTable table, Together together, int count, int keep) {
        return run(table, together, count, new BestChoices(keep));
    }

    static Found run(DemandTable table, Together together, int count, BestChoices best) {
        FullSearch search = new FullSearch(table, together, count, best);
        search.choose(0, 0);
        return new Found(search.best.list(), search.judged);
    }

    /**
     * How many choices there are, counting those that are not allowed.
     *
     * @param candidates number of candidates
     * @param count how many are chosen
     * @return the binomial coefficient, or the greatest long if it is greater
     */
    public static long choices(int candidates, int count) {
        double product = 1;
        for (int i = 1; i <= Math.min(count, candidates - count); i++) {
            product = product * (candidates - i + 1) / i;
        }
        return count > candidates ? 0 : Math.round(product);
    }

    private void choose(int depth, int from) {
        for (int c = from; c <= table.candidates - (count - depth); c++) {
            if (!isAllowed(c, depth)) {
                continue;
            }
            chosen[depth] = c;
            if (depth == count - 1) {
                judged++;
                best.offer(chosen, last(depth, c));
            } else {
                serve(depth, c);
                choose(depth + 1, c + 1);
            }
        }
    }

    private boolean isAllowed(int candidate, int depth) {
        for (int i = 0; i < depth; i++) {
            if (!together.allowed(chosen[i], candidate)) {
                return false;
            }
        }
        return true;
    }

    private double[] before(double[][] levels, double[] standing, int depth) {
        return depth == 0 ? standing : levels[depth - 1];
    }

    /** Who serves what when this candidate is added to those before. */
    private void serve(int depth, int candidate) {
        double[] costBefore = before(cost, table.standingCost, depth);
        double[] partBefore = before(part, table.standingPart, depth);
        double[] wholeBefore = before(whole, table.standingWhole, depth);
        int at = candidate * table.demands;
        for (int d = 0; d < table.demands; d++, at++) {
            boolean nearer = table.cost[at] < costBefore[d];
            cost[depth][d] = nearer ? table.cost[at] : costBefore[d];
            part[depth][d] = nearer ? table.part[at] : partBefore[d];
            whole[depth][d] = nearer ? table.whole[at] : wholeBefore[d];
        }
    }

    /** The score of those before with this candidate; added up in the order of {@link DemandTable#score}. */
    private double last(int depth, int candidate) {
        double[] costBefore = before(cost, table.standingCost, depth);
        double[] partBefore = before(part, table.standingPart, depth);
        double[] wholeBefore = before(whole, table.standingWhole, depth);
        int at = candidate * table.demands;
        double parts = 0;
        double wholes = 0;
        for (int d = 0; d < table.demands; d++, at++) {
            boolean nearer = table.cost[at] < costBefore[d];
            if (!nearer && costBefore[d] == Double.POSITIVE_INFINITY) {
                return Double.POSITIVE_INFINITY;
            }
            parts += nearer ? table.part[at] : partBefore[d];
            wholes += nearer ? table.whole[at] : wholeBefore[d];
        }
        return wholes > 0 ? parts / wholes : 0;
    }
}
