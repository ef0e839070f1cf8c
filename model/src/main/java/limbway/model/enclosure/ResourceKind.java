package limbway.model.enclosure;

/** What an animal goes to a place for; the word is the key that a scenario uses. */
public enum ResourceKind {
    /** A feeder, a tray, a fruiting branch. */
    FOOD("food"),
    /** A drinker, a pool edge. */
    WATER("water"),
    /** A place to rest out of the sun. */
    SHADE("shade"),
    /** A place to sleep at night. */
    NEST("nest"),
    /** A place out of sight of visitors and other animals. */
    RETREAT("retreat");

    private final String word;

    ResourceKind(String word) {
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

    /**
     * Whether an animal can lie down and rest there undisturbed.
     *
     * @return true for shade, nest and retreat
     */
    public boolean isRestingPlace() {
        return this == SHADE || this == NEST || this == RETREAT;
    }
}
