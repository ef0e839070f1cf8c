/**
 * What a sweep through values of a scenario tells: the best point, and how much each value matters.
 *
 * <p>Knows criteria and intervals; lives in nothing itself. Start at {@link limbway.reports.measure.sweep.Swept}.
 */
package limbway.reports.measure.sweep;
