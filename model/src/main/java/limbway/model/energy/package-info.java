/**
 * What moving and resting cost, one class for each published formula.
 *
 * <p>All movement costs are net: resting power is charged once, by the second, and never added to a move. Knows bodies
 * and parameters. Start at {@link limbway.model.energy.ModeCost}.
 */
package limbway.model.energy;
