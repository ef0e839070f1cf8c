/**
 * The report that a keeper opens: one page that holds everything it needs.
 *
 * <p>Knows measures, charts and words. No script, no request to anywhere. Start at
 * {@link limbway.reports.page.ReportPage}; each section is a class of its own.
 */
package limbway.reports.page;
