package limbway.model.enclosure;

/** What a support is built as; the word is the key that a scenario uses. */
public enum SupportKind {
    /** An upright or leaning pole or mast. */
    POLE("pole"),
    /** A stiff member between two places: log, beam, bar. */
    BEAM("beam"),
    /** A limb built in or grown at its first end and free at the other. */
    BRANCH("branch"),
    /** A rope or hose between two places, hanging in its own sag. */
    ROPE("rope"),
    /** The stem of a tree, rooted in the ground. */
    TRUNK("trunk"),
    /** Two rails with rungs; what is gripped is a rung. */
    LADDER("ladder");

    private final String word;

    SupportKind(String word) {
        this.word = word;
    }

    /**
     * Whether it stands or leans on the ground, so that places on it are told by their height.
     *
     * @return true for poles and trunks
     */
    public boolean isUpright() {
        return this == POLE || this == TRUNK;
    }

    /**
     * The word used in scenarios and reports.
     *
     * @return a lower-case English word
     */
    public String word() {
        return word;
    }
}
