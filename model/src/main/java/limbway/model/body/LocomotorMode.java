package limbway.model.body;

/** How an animal moves, in standard positional terms. The word is printed in exports and reports. */
public enum LocomotorMode {
    /** On all fours on the ground, a platform or a broad, nearly level beam. */
    QUADRUPEDAL_WALK("quadrupedal walk", "level"),
    /** Up a support steeper than 45 degrees. */
    VERTICAL_CLIMB("vertical climb", "climb"),
    /** Down a support steeper than 45 degrees. */
    VERTICAL_DESCENT("vertical descent", "descent"),
    /** Along or below supports with several limbs on several holds. */
    CLAMBER("clamber", "clamber"),
    /** Across a gap by reaching over and drawing the body after. */
    BRIDGE("bridge", "bridge");

    private final String word;
    private final String part;

    LocomotorMode(String word, String part) {
        this.word = word;
        this.part = part;
    }

    /**
     * The positional term.
     *
     * @return lower-case English words
     */
    public String word() {
        return word;
    }

    /**
     * The part of an energy sum that this mode is booked under.
     *
     * @return one lower-case word: level, climb, descent, clamber or bridge
     */
    public String part() {
        return part;
    }
}
