/**
 * Which ropes or poles to add, and which of those that are there hurt most if they fail.
 *
 * <p>Knows the rest of {@code limbway.sim.experiment}. Start at {@link limbway.sim.experiment.link.LinkSearch}.
 */
package limbway.sim.experiment.link;
