/**
 * What moving and resting cost, one class for each published formula.
 *
 * <p>All movement costs are net: resting power is charged once, by the second, and never added to a move. Knows bodies,
 * parameters and the names of materials. Start at {@link limbway.model.energy.ModeCost}; for gaps wider than an arm at
 * {@link limbway.model.energy.SwayCost} and {@link limbway.model.energy.LeapCost}.
 */
package limbway.model.energy;
