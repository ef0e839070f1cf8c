package limbway.model.enclosure;

import limbway.model.geometry.Outline;

/**
 * An area of the ground that cannot be walked over: a rock, a pond, a building.
 *
 * @param id name, unique within the enclosure
 * @param outline its footprint
 */
public record Obstacle(String id, Outline outline) {}
