/**
 * Points, lines and outlines in metres; knows no animal and no enclosure.
 *
 * <p>x points east, y north, z up. Polygon work that a library does well is left to JTS; what stands here is what JTS
 * does not do: closest approach in three dimensions and neighbours in a uniform grid.
 */
package limbway.model.geometry;
