package limbway.sim.experiment.statistics;

import java.util.List;
import java.util.Optional;

/**
 * Selects the system with the greatest mean, one replication after another, and drops those that are clearly worse.
 *
 * <p>What is guaranteed, if the selection is not ended by its budget: where the best mean is better than every other by the
 * indifference or more, it is selected with the stated probability at least. Where others are nearer to it than that, nothing is
 * guaranteed of which of them is selected: one that is worse by less than the indifference may be. Systems may have different
 * variances and may be run under the same chance, because only their differences are looked at.
 *
 * @source Kim and Nelson 2001, ACM Trans. Model. Comput. Simul. 11:251-273, doi 10.1145/502109.502111, with c = 1 (from
 *     memory)
 * @validity values of a system are independent from replication to replication and near normal: one value stands for whole
 *     days of the whole group
 */
public final class KimNelson {

    private final double probability;
    private final double indifference;
    private final int firstStage;

    /** Where values come from. */
    @FunctionalInterface
    public interface Source {

        /**
         * Values of one system; the same replication means the same chance in all.
         *
         * @param system number of the system, from 0
         * @param first number of the first replication, from 0
         * @param count how many, 1 or more
         * @return one value for each replication, greater is better; empty if the work was ended
         */
        Optional<double[]> values(int system, int first, int count);
    }

    /**
     * Sets up a selection.
     *
     * @param probability least probability of selecting the best where it leads by the indifference, above 0.5 and below 1
     * @param indifference smallest difference of means that matters, above 0
     * @param firstStage replications of every system before any is dropped, 2 or more; 10 or more is advised
     * @throws IllegalArgumentException naming the argument outside its range
     */
    public KimNelson(double probability, double indifference, int firstStage) {
        if (!(probability > 0.5 && probability < 1)) {
            throw new IllegalArgumentException(
                    "selection: probability = " + probability + ", allowed above 0.5 and below 1");
        }
        if (!(indifference > 0)) {
            throw new IllegalArgumentException("selection: indifference = " + indifference + ", allowed above 0");
        }
        if (firstStage < 2) {
            throw new IllegalArgumentException("selection: firstStage = " + firstStage + ", allowed 2 or more");
        }
        this.probability = probability;
        this.indifference = indifference;
        this.firstStage = firstStage;
    }

    /**
     * The constant eta of the procedure, {@code ((2(1-p)/(k-1))^(-2/(n-1)) - 1)/2}.
     *
     * @param systems number of systems, 2 or more
     * @return a number above 0
     */
    public double eta(int systems) {
        double tail = 2 * (1 - probability) / (systems - 1);
        return 0.5 * (StrictMath.pow(tail, -2.0 / (firstStage - 1)) - 1);
    }

    /**
     * The constant h² of the procedure, {@code 2 eta (n-1)}.
     *
     * @param systems number of systems, 2 or more
     * @return a number above 0
     */
    public double h2(int systems) {
        return 2 * eta(systems) * (firstStage - 1);
    }

    /**
     * What came of a selection.
     *
     * @param best number of the system with the greatest mean of those left
     * @param left systems that were never dropped, in order
     * @param reached whether the selection came to its end; false if the budget ended before, and then nothing is guaranteed
     * @param replications replications that the judgement of each system rests on
     * @param atMost replications of each system left after which the procedure is sure to have ended
     */
    public record Selected(int best, List<Integer> left, boolean reached, List<Integer> replications, int atMost) {

        /** Keeps copies. */
        public Selected {
            left = List.copyOf(left);
            replications = List.copyOf(replications);
        }

        /**
         * All replications that were judged.
         *
         * @return sum over the systems
         */
        public int used() {
            return replications.stream().mapToInt(n -> n).sum();
        }
    }

    /**
     * Runs the selection.
     *
     * @param systems number of systems, 1 or more
     * @param budget replications of all systems together that may be used; at least the first stage of all is
     * @param source where values come from
     * @param batch how many replications are asked for at once; the judgement does not depend on it
     * @return the selection, or empty if the source was ended
     */
    public Optional<Selected> run(int systems, int budget, Source source, int batch) {
        Elimination state = new Elimination(systems, firstStage, indifference, systems > 1 ? h2(systems) : 0);
        for (int i = 0; i < systems; i++) {
            Optional<double[]> first = source.values(i, 0, firstStage);
            if (first.isEmpty()) {
                return Optional.empty();
            }
            state.append(i, first.get());
        }
        state.begin();
        while (!state.isOver() && state.used() + state.left().size() <= budget) {
            for (int i : state.left()) {
                if (state.needsMore(i)) {
                    Optional<double[]> more = source.values(i, state.done(), batch);
                    if (more.isEmpty()) {
                        return Optional.empty();
                    }
                    state.append(i, more.get());
                }
            }
            state.step();
        }
        return Optional.of(state.selected());
    }
}
