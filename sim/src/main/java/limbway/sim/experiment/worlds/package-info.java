/**
 * Plausible worlds: all that is assumed or uncertain is drawn together over its ranges, and layouts are compared in each.
 *
 * <p>Tells in what share of the worlds one layout has more than another, which inputs turn that, and where. Knows the rest of
 * {@code limbway.sim.experiment}. Start at {@link limbway.sim.experiment.worlds.PlausibleWorlds}.
 */
package limbway.sim.experiment.worlds;
