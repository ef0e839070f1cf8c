/**
 * Finds out which assumptions move an answer: elementary effects along random walks through the ranges of all of them.
 *
 * <p>Knows how a layout is run, and nothing of what is measured in it. Start at
 * {@link limbway.sim.experiment.screening.Screening}.
 */
package limbway.sim.experiment.screening;
