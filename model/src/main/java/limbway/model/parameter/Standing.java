package limbway.model.parameter;

/** How well a number is known. The words are printed in reports as they stand here. */
public enum Standing {
    /** Read in the named source. */
    PUBLISHED("published"),
    /** Computed from published values in a way the source line describes. */
    DERIVED("derived"),
    /** Carried over from memory or a secondary page; check before relying on it. */
    UNVERIFIED("unverified"),
    /** No source: a choice of this project, to be varied in any study that leans on it. */
    ASSUMPTION("assumption");

    private final String word;

    Standing(String word) {
        this.word = word;
    }

    /**
     * The word printed in reports.
     *
     * @return a lower-case English word
     */
    public String word() {
        return word;
    }
}
