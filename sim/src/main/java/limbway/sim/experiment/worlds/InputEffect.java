package limbway.sim.experiment.worlds;

import java.util.List;

import limbway.sim.experiment.screening.Factor;
import limbway.sim.experiment.statistics.FirstOrder;

/**
 * How much an input decides over a difference.
 *
 * @param input what was varied
 * @param index share of the spread of the difference that it explains by itself
 * @param whereLow mean difference in that fifth of the worlds in which the input is lowest
 * @param whereHigh mean difference in that fifth in which it is highest
 */
public record InputEffect(Factor input, FirstOrder index, double whereLow, double whereHigh) {

    private static final int PARTS = 5;

    static InputEffect of(Factor input, double[] shares, double[] differences, double floor) {
        int n = differences.length;
        List<Integer> order = java.util.stream.IntStream.range(0, n)
                .boxed()
                .sorted(java.util.Comparator.comparingDouble(i -> shares[i]))
                .toList();
        int part = Math.max(1, n / PARTS);
        return new InputEffect(
                input,
                FirstOrder.of(shares, differences, FirstOrder.binsFor(n), floor),
                mean(order.subList(0, part), differences),
                mean(order.subList(n - part, n), differences));
    }

    private static double mean(List<Integer> of, double[] values) {
        double sum = 0;
        for (int i : of) {
            sum += values[i];
        }
        return sum / of.size();
    }
}
