/**
 * The files that other programs read: tables with a description of every field, and the record of a run.
 *
 * <p>Knows journals and measures. Numbers have fixed formats, lines end with a line feed, and nothing depends on the
 * machine, the clock or the number of threads, except {@code run-times.json}. Start at
 * {@link limbway.reports.data.DataFolder}.
 */
package limbway.reports.data;
