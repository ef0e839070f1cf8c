/**
 * Finds where places that animals go to should be: all combinations of candidates by expected travel, then the best of them by
 * letting the group live there.
 *
 * <p>Knows the rest of {@code limbway.sim.experiment}. Start at {@link limbway.sim.experiment.placement.PlacingSearch}.
 */
package limbway.sim.experiment.placement;
