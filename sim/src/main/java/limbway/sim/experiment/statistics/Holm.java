package limbway.sim.experiment.statistics;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Corrects p values for the number of questions asked: if each is compared with 0.05, the chance that anything is declared
 * where there is nothing stays at most 0.05 for all together.
 *
 * @source Holm 1979, Scandinavian Journal of Statistics 6:65-70; from memory
 * @validity any dependence between the questions
 */
public final class Holm {

    private Holm() {}

    /**
     * The corrected values: each p, from the least on, times the number of questions that are left, and never less than one
     * before it.
     *
     * @param p values from 0 to 1, in any order
     * @return corrected values in the same order, 0 to 1
     * @throws IllegalArgumentException if a value is not from 0 to 1
     */
    public static double[] adjusted(double... p) {
        for (double one : p) {
            if (!(one >= 0 && one <= 1)) {
                throw new IllegalArgumentException("Holm: p = " + one + ", allowed 0 to 1");
            }
        }
        List<Integer> ascending = IntStream.range(0, p.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> p[i]))
                .toList();
        double[] adjusted = new double[p.length];
        double least = 0;
        for (int rank = 0; rank < p.length; rank++) {
            int i = ascending.get(rank);
            least = Math.min(1, Math.max(least, (p.length - rank) * p[i]));
            adjusted[i] = least;
        }
        return adjusted;
    }
}
