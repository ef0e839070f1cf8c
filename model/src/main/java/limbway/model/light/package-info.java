/**
 * The sun: when it rises and sets.
 *
 * <p>Knows a site and a date. Positions come from a library that implements the Solar Position Algorithm.
 */
package limbway.model.light;
