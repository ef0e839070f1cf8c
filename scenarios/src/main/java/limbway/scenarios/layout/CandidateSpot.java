package limbway.scenarios.layout;

import limbway.model.geometry.Point;

/**
 * A place where something could be put.
 *
 * @param words where it is, as the scenario says it
 * @param at the same in space
 * @param on name of the support or platform that carries it, or empty
 */
public record CandidateSpot(String words, Point at, String on) {}
