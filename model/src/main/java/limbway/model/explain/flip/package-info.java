/**
 * The smallest single change of a layout that turns one trip off the ground, each tried by compiling the changed layout.
 *
 * <p>A trip is turned when the way off the ground is then the cheapest, so that at least half of such trips stay off the
 * ground. Start at {@link limbway.model.explain.flip.Flips}.
 */
package limbway.model.explain.flip;
