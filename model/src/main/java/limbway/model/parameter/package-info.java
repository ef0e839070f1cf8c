/**
 * Numbers that somebody may doubt: each with unit, range, source and how well it is known.
 *
 * <p>Knows nothing else of the project. A report lists every {@link limbway.model.parameter.Parameter} that took part in
 * a result, so a constant that matters belongs here and not in the middle of a formula.
 */
package limbway.model.parameter;
