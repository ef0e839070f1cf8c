/**
 * Holds those pages of {@code docs/} that are made from the code to what the code says.
 *
 * <p>Knows all modules. Start at {@link limbway.reports.handbook.ParameterTableTest}.
 */
package limbway.reports.handbook;
