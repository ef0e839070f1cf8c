package limbway.model.graph;

import limbway.model.geometry.Segment;

/**
 * A straight piece of support that a body can hold or walk on from end to end.
 *
 * @param axis its centre line
 * @param diameterM thickness [m], above 0
 */
public record UsableLine(Segment axis, double diameterM) {}
