package limbway.model.link;

import limbway.model.body.Body;

/**
 * Trips of one body from one place to another.
 *
 * @param body who goes
 * @param fromHold where it starts, a hold of the graph as it is
 * @param toResource number of the resource it goes to
 * @param tripsPerDay how often, by all animals of that body together [1/d]
 * @param metresPerDay how far these trips lead together [m/d]
 */
public record Errand(Body body, int fromHold, int toResource, double tripsPerDay, double metresPerDay) {}
