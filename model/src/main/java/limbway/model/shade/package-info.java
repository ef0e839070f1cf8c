/**
 * What shades what: rays towards the sun, and the audit of the rest platforms through a year.
 *
 * <p>Knows an enclosure and the position of the sun; no weather, no animal. Start with
 * {@link limbway.model.shade.ShadeYear}.
 */
package limbway.model.shade;
