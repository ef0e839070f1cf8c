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
    BRIDGE("bridge", "bridge"),
    /** On two feet along a support too narrow to walk on, with a hand on another above. */
    BIPEDAL_WALK("bipedal walk", "bipedal"),
    /** Hand over hand below a support or a mesh, the body swinging between holds. */
    BRACHIATE("brachiate", "brachiate"),
    /** Across a gap by swinging the support that carries the animal until the far side is within reach. */
    SWAY("sway", "sway"),
    /** Across a gap through the air, from a push of the limbs. */
    LEAP("leap", "leap"),
    /** Down by letting go. */
    DROP("drop", "drop");

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
     * @return one lower-case word, another for each mode
     */
    public String part() {
        return part;
    }
}
