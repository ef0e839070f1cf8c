/**
 * Why a way leads over the ground: what is missing off it, or what makes the way off it dear.
 *
 * <p>Knows enclosures, bodies, graphs and routes; says nothing in words. Start at
 * {@link limbway.model.explain.GroundReasons}; {@link limbway.model.explain.Islands} holds the search for missing gaps,
 * {@link limbway.model.explain.PairWays} the ways between two resources.
 */
package limbway.model.explain;
