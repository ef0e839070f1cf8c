/** Benchmarks; each answers a question, and the answer with its date stands in {@code docs/benchmarks.md}. */
package limbway.reports.bench;
