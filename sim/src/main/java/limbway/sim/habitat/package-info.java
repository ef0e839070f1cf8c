/**
 * A layout made ready to be lived in.
 *
 * <p>Knows the model only. Everything else of {@code limbway.sim} starts from {@link limbway.sim.habitat.Habitat}.
 */
package limbway.sim.habitat;
