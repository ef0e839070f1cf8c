/**
 * What placements are judged by, and what came of it.
 *
 * <p>Knows the rest of {@code limbway.reports.measure}. Start at {@link limbway.reports.measure.placement.PlacingAnswer}.
 */
package limbway.reports.measure.placement;
