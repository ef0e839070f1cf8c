/**
 * Least-energy ways through a graph, overall and off the ground.
 *
 * <p>For each body and resource two trees are kept: the cheapest way without a move on the ground, and the cheapest way
 * with at least one. The cheaper of the two is the cheapest way there is, so a choice between them costs two look-ups.
 * Start at {@link limbway.model.route.Routes}.
 */
package limbway.model.route;
