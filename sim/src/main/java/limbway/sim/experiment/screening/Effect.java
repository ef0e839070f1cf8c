package limbway.sim.experiment.screening;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a factor moves an answer, over all walks: each elementary effect is the change of the answer at its turn, scaled from
 * the step to the whole range.
 *
 * @param factor what was varied
 * @param mean mean effect, in the unit of the answer
 * @param meanAbsolute mean of the effects without their signs: how much it matters, whichever way
 * @param spread standard deviation of the effects: how much its effect depends on the other factors and, where their values
 *     lie in its range, on its own; empty with fewer than two effects
 * @param standardError standard error of the mean absolute effect over the walks; empty with fewer than two effects
 * @param n number of effects, 1 or more
 * @source Morris 1991, doi 10.1080/00401706.1991.10484804, for mean and spread; Campolongo, Cariboni and Saltelli 2007, doi
 *     10.1016/j.envsoft.2006.10.004, for the mean absolute effect
 */
public record Effect(
        Factor factor, double mean, double meanAbsolute, OptionalDouble spread, OptionalDouble standardError, int n) {

    /**
     * Sums up elementary effects.
     *
     * @param factor what was varied
     * @param effects one from each walk, in their order
     * @return the effect; empty where no walk gave one
     */
    public static Optional<Effect> of(Factor factor, List<Double> effects) {
        if (effects.isEmpty()) {
            return Optional.empty();
        }
        List<Double> absolute = effects.stream().map(Math::abs).toList();
        OptionalDouble spreadOfAbsolute = spread(absolute);
        return Optional.of(new Effect(
                factor,
                mean(effects),
                mean(absolute),
                spread(effects),
                spreadOfAbsolute.isPresent()
                        ? OptionalDouble.of(spreadOfAbsolute.getAsDouble() / Math.sqrt(effects.size()))
                        : OptionalDouble.empty(),
                effects.size()));
    }

    private static double mean(List<Double> values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.size();
    }

    private static OptionalDouble spread(List<Double> values) {
        if (values.size() < 2) {
            return OptionalDouble.empty();
        }
        double mean = mean(values);
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return OptionalDouble.of(Math.sqrt(squares / (values.size() - 1)));
    }
}
