/**
 * What came out of a run, as measures, charts, pages and files, and the commands that ask for it.
 *
 * <p>Knows all other modules. Start at {@code command}; {@code measure} computes and draws nothing, {@code chart} draws
 * and computes nothing, {@code page} and {@code data} write files, {@code words} says things.
 */
package limbway.reports;
