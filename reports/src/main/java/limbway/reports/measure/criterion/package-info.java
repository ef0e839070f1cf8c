/**
 * What layouts are judged by: one number for each replication, with words, unit and the way in which a designer usually
 * wants it to go.
 *
 * <p>Made of the measures of {@link limbway.reports.measure}; draws nothing. Start at
 * {@link limbway.reports.measure.criterion.Criteria}.
 */
package limbway.reports.measure.criterion;
