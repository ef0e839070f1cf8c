/**
 * Compares layouts under the same chance until their differences are known well enough.
 *
 * <p>Knows the trials and statistics of {@code limbway.sim.experiment}. Start at
 * {@link limbway.sim.experiment.comparison.Comparison}.
 */
package limbway.sim.experiment.comparison;
