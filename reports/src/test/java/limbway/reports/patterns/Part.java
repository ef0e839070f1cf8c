package limbway.reports.patterns;

/**
 * One number of a pattern.
 *
 * @param words what is measured
 * @param published what was published of it
 * @param unit how it is printed
 * @param band what counts as met
 * @param measurement how it is measured here
 */
record Part(String words, String published, Unit unit, Band band, Measurement measurement) {}
