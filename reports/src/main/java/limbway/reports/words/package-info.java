/**
 * How the reports say things: figures in fixed formats, reasons as sentences, and the cautions.
 *
 * <p>Knows the model only. Everything here is for a reader who looks after animals, not after programs. Start at
 * {@link limbway.reports.words.ReasonText}.
 */
package limbway.reports.words;
