package limbway.sim.experiment.comparison;

/** Why a comparison ended. */
public enum Stopped {
    /** All differences that matter are known well enough. */
    PRECISE("precision reached"),
    /** The budget of repetitions is spent. */
    BUDGET("budget spent"),
    /** Somebody wanted it to end. */
    INTERRUPTED("interrupted");

    private final String words;

    Stopped(String words) {
        this.words = words;
    }

    /**
     * The reason in words.
     *
     * @return lower-case English words
     */
    public String words() {
        return words;
    }
}
