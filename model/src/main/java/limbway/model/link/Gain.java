package limbway.model.link;

/**
 * What a change is expected to do to the trips that are made as it stands.
 *
 * @param offGroundShare how much more of their length is on trips that take the way off the ground, -1 to 1
 * @param flippedTripsPerDay how many more trips a day take it
 */
public record Gain(double offGroundShare, double flippedTripsPerDay) {}
