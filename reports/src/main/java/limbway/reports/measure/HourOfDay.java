package limbway.reports.measure;

/**
 * Travel that began within one hour of the day.
 *
 * @param hour 0 to 23, in clock time
 * @param share share off the ground of trips that began in it
 * @param offGroundMPerDay metres a day off the ground, all animals together
 * @param groundMPerDay metres a day on the ground, likewise
 */
public record HourOfDay(int hour, OffGroundShare share, double offGroundMPerDay, double groundMPerDay) {}
