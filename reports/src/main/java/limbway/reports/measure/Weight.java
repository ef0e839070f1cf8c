package limbway.reports.measure;

/** How much a finding matters. */
public enum Weight {
    /** Must be mended: something that the animals need cannot be had. */
    MEND("mend"),
    /** Works, but not as a climbing structure is meant to. */
    CAUTION("caution"),
    /** Good to know. */
    NOTE("note");

    private final String word;

    Weight(String word) {
        this.word = word;
    }

    /**
     * The word used in answers.
     *
     * @return mend, caution or note
     */
    public String word() {
        return word;
    }
}
