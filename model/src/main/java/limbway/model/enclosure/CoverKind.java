package limbway.model.enclosure;

/** What a cover is; the word is what a scenario writes. */
public enum CoverKind {
    /** Solid: lets no sunlight through. */
    ROOF("roof"),
    /** Cloth or slats: lets a stated share of the sunlight through. */
    SAIL("sail");

    private final String word;

    CoverKind(String word) {
        this.word = word;
    }

    /**
     * The word used in scenarios and reports.
     *
     * @return one lower-case English word
     */
    public String word() {
        return word;
    }
}
