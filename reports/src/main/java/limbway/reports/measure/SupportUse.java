package limbway.reports.measure;

/**
 * How long one thing is used that carries animals, sleep at night left out.
 *
 * @param id name of the support, platform or panel
 * @param secondsPerAnimalDay time on it, of an animal in a day, on average over animals, days and repetitions [s]
 */
public record SupportUse(String id, double secondsPerAnimalDay) {}
