package limbway.sim.chance;

/** What a random number decides. Each purpose has streams of its own, so that none disturbs another. */
public enum Purpose {
    /** How much an animal is drawn to each place, beyond what its needs say. */
    PLACE("place"),
    /** Whether it takes the way off the ground. */
    WAY("way"),
    /** Whether it drives another from its stall. */
    CONTEST("contest"),
    /** From which of its values an assumption sets out when assumptions are screened. */
    SCREENING_START("screening start"),
    /** When its turn comes to change. */
    SCREENING_TURN("screening turn"),
    /** Which repetitions are drawn again to find how sure a median or a ratio is. */
    RESAMPLING("resampling"),
    /** Into which part of its range a value falls in each point of a Latin hypercube. */
    STRATUM("stratum"),
    /** Where in that part it lies. */
    STRATUM_POINT("stratum point");

    private final long key;

    Purpose(String word) {
        this.key = Name.key(word);
    }

    long key() {
        return key;
    }
}
