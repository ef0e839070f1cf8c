package limbway.reports.lesson;

/**
 * A step that this enclosure has no data for.
 *
 * @param what its heading
 * @param why what is missing, a clause
 */
public record LeftOut(String what, String why) {}
