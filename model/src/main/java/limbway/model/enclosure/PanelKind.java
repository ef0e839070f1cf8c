package limbway.model.enclosure;

/** What a climbable panel is made as; the word is the key that a scenario uses. */
public enum PanelKind {
    /** Welded or woven wire in a frame: a wall or roof of a cage. */
    MESH("mesh"),
    /** A net of rope. */
    NET("net");

    private final String word;

    PanelKind(String word) {
        this.word = word;
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
