/**
 * The pages as PDF, for a mail, a meeting and a printer.
 *
 * <p>Takes a finished page and the pictures in it; adds no word of its own but the number of each sheet.
 */
package limbway.reports.paper;
