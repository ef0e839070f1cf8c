/**
 * What may be concluded from repetitions: intervals, corrections for several questions, samples of plausible inputs.
 *
 * <p>Knows numbers only. Start at {@link limbway.sim.experiment.statistics.Interval}.
 */
package limbway.sim.experiment.statistics;
