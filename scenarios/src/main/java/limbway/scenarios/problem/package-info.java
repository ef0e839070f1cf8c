/**
 * Mistakes in a scenario: where each stands, what was found, what is allowed and how to mend it.
 *
 * <p>Knows nothing of YAML or of enclosures. Start at {@link limbway.scenarios.problem.Problem}; a reader collects them
 * in {@link limbway.scenarios.problem.Problems} and a command prints them by
 * {@link limbway.scenarios.problem.ProblemReport}.
 */
package limbway.scenarios.problem;
