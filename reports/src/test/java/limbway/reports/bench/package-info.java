/**
 * Benchmarks, one question each. Not run by the build; each class says how.
 *
 * <p>They live in reports because it sees every module.
 */
package limbway.reports.bench;
