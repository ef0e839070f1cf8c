/**
 * Random numbers keyed by meaning: seed, replication, animal, purpose and a counter, never a thread or a moment.
 *
 * <p>Knows nothing else of the project. Start at {@link limbway.sim.chance.Chance}. Sequential generators were not used:
 * one more draw of one animal would have changed the days of all others.
 */
package limbway.sim.chance;
