package limbway.scenarios.layout;

import limbway.model.geometry.Point;

/**
 * A place in space.
 *
 * @param point where
 * @param on name of the support or platform that carries it, or empty
 */
record Located(Point point, String on) {}
