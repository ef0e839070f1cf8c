package limbway.sim.journal;

/** Why an animal made a trip or a stay. */
public enum Motive {
    /** To eat. */
    HUNGER("hunger"),
    /** To drink. */
    THIRST("thirst"),
    /** To rest by day. */
    FATIGUE("fatigue"),
    /** To rest where it is less hot. */
    HEAT("heat"),
    /** To be at a place for what it is worth beyond needs, or for a change. */
    COMFORT("comfort"),
    /** To keep close to the animal that it follows. */
    COMPANY("company"),
    /** To sleep. */
    NIGHT("night");

    private final String word;

    Motive(String word) {
        this.word = word;
    }

    /**
     * The word used in tables.
     *
     * @return one lower-case English word
     */
    public String word() {
        return word;
    }
}
