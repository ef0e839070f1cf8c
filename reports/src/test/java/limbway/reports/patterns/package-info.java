/**
 * Eighteen patterns that are published of how apes use their space, each beside what comes out here. Start at
 * {@link limbway.reports.patterns.PatternTableTest}; the scenarios are in {@code scenarios/examples/patterns}.
 */
package limbway.reports.patterns;
