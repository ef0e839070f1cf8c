/**
 * The sun: when it rises and sets, where it stands, and how strongly it shines through a clear sky.
 *
 * <p>Knows a site and a moment. Positions come from a library that implements the Solar Position Algorithm. Start with
 * {@link limbway.model.light.SunPosition}.
 */
package limbway.model.light;
