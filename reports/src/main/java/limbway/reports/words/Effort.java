package limbway.reports.words;

/** How many repetitions something would take; nobody is told to make more than a million. */
public final class Effort {

    /** More than this would take a machine of today weeks. Assumption. */
    private static final long MOST = 1_000_000;

    private Effort() {}

    /**
     * Whether nobody should make so many.
     *
     * @param repetitions an estimate, 0 or more
     * @return true above a million
     */
    public static boolean isAbsurd(long repetitions) {
        return repetitions > MOST;
    }

    /**
     * So many repetitions.
     *
     * @param repetitions an estimate, 0 or more
     * @return for example {@code about 2 400 repetitions} or {@code more than a million repetitions}
     */
    public static String repetitions(long repetitions) {
        return isAbsurd(repetitions)
                ? "more than a million repetitions"
                : "about " + Figures.count(repetitions) + (repetitions == 1 ? " repetition" : " repetitions");
    }
}
