/**
 * Food as an animal meets it: how fast it can be eaten as it grows less, when it is worth leaving, what is remembered of it.
 *
 * <p>Knows how food is put out and nothing else of the model; no animal, clock or place. Start at
 * {@link limbway.sim.food.GainCurve}.
 */
package limbway.sim.food;
