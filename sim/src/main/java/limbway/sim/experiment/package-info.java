/**
 * Repeats days under chance that is keyed by meaning, on as many threads as there are, with the same result on any
 * number.
 *
 * <p>Knows the rest of {@code limbway.sim} and the model. Start at {@link limbway.sim.experiment.Outcome}.
 */
package limbway.sim.experiment;
