package limbway.model.enclosure;

/** What the surface of a support is made of; the word is what a scenario writes. */
public enum Material {
    /** Zinc-coated steel tube. */
    GALVANISED_STEEL("galvanised steel", false),
    /** Steel under paint. */
    PAINTED_STEEL("painted steel", false),
    /** Stainless steel. */
    STAINLESS_STEEL("stainless steel", false),
    /** Sawn or peeled wood. */
    TIMBER("timber", false),
    /** Wood with its bark on, living or dead. */
    BARK("bark", true),
    /** Natural or synthetic fibre rope. */
    FIBRE_ROPE("fibre rope", true),
    /** Woven hose. */
    FIRE_HOSE("fire hose", true),
    /** Cast concrete shaped as rock or branch. */
    CONCRETE("concrete", true);

    private final String word;
    private final boolean rough;

    Material(String word, boolean rough) {
        this.word = word;
        this.rough = rough;
    }

    /**
     * The word used in scenarios and reports.
     *
     * @return one or two lower-case English words
     */
    public String word() {
        return word;
    }

    /**
     * Whether hands and feet hold on it by friction, so that a stem too thick to grip can still be hugged.
     *
     * @return true for bark, fibre and cast surfaces (assumption; no measured friction was found)
     */
    public boolean isRough() {
        return rough;
    }
}
