package limbway.sim.experiment.worlds;

import limbway.sim.experiment.screening.Factor;

/**
 * How much an input decides over a difference by itself and together with others, among the strongest inputs, with all
 * other inputs as assumed.
 *
 * @param input what was varied
 * @param first first-order index; by chance a little below 0 or above 1
 * @param total total index, 0 or more; chance counts in it as if it depended on every input
 * @param totalError standard error of the total index
 * @param points points of each of the two samples that it rests on
 */
public record TotalEffect(Factor input, double first, double total, double totalError, int points) {}
