/**
 * From the text of a scenario to a study.
 *
 * <p>Knows the model, and no simulator or chart. Start at {@link limbway.scenarios.ScenarioReader}; the way goes through
 * {@code format} (words with their place), {@code entry} (what each entry declares), {@code survey} (trees from a
 * measured table), {@code layout} (what the entries mean together). Every mistake is a
 * {@link limbway.scenarios.problem.Problem} with its place; nothing is thrown at the user.
 */
package limbway.scenarios;
