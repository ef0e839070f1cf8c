/**
 * What the declared entries mean together: one layout of an enclosure.
 *
 * <p>Names are looked up, places become points, sags become lines, and what cannot stand where it is put becomes a
 * problem. A variant is a {@link limbway.scenarios.layout.Sheet} of entries changed by
 * {@link limbway.scenarios.layout.SheetChanges} and then read by the same {@link limbway.scenarios.layout.LayoutReader}
 * as the base, so both obey the same rules.
 */
package limbway.scenarios.layout;
