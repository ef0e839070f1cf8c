/**
 * Lets animals live in layouts and keeps of it only what was asked about, also across an interruption.
 *
 * <p>Comparisons, placements, links and sweeps rest on it. Knows the rest of {@code limbway.sim.experiment}. Start at
 * {@link limbway.sim.experiment.trial.Trials}.
 */
package limbway.sim.experiment.trial;
