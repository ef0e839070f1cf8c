package limbway.model.enclosure;

/** What stops an animal and cannot be climbed; the word is the key that a scenario uses. */
public enum BarrierKind {
    /** A smooth solid wall or building. */
    WALL("wall"),
    /** A pane of glass. */
    GLASS("glass"),
    /** Water too deep to wade; its top is the water line. */
    WATER("water");

    private final String word;

    BarrierKind(String word) {
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
