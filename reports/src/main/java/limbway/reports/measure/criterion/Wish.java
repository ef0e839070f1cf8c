package limbway.reports.measure.criterion;

/** In which direction a designer usually wants a criterion to go. */
public enum Wish {
    /** The more the better. */
    MORE("more is better"),
    /** The less the better. */
    LESS("less is better"),
    /** Neither: it describes, and what is wanted depends on the animals. */
    NEITHER("neither more nor less is better as such");

    private final String words;

    Wish(String words) {
        this.words = words;
    }

    /**
     * The wish in words.
     *
     * @return lower-case English words
     */
    public String words() {
        return words;
    }

    /**
     * Whether one value is wanted more than another.
     *
     * @param value a value
     * @param other another
     * @return true if it is better; never where neither is
     */
    public boolean isBetter(double value, double other) {
        return switch (this) {
            case MORE -> value > other;
            case LESS -> value < other;
            case NEITHER -> false;
        };
    }
}
