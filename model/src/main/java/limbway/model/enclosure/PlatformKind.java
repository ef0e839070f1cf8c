package limbway.model.enclosure;

/** What an animal lies on; the word is the key that a scenario uses. */
public enum PlatformKind {
    /** A rigid deck. */
    DECK("platform"),
    /** Webbing, hose or net hung between supports; it gives under the animal. */
    HAMMOCK("hammock");

    private final String word;

    PlatformKind(String word) {
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
