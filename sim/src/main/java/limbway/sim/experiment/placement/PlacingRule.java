package limbway.sim.experiment.placement;

/** A rule by which a candidate may be out of the question; the word is that of the scenario and the command line. */
public enum PlacingRule {
    /** A keeper reaches it from the ground. */
    KEEPER_REACH("keeper-reach"),
    /** What carries it bears it with the heaviest animal beside it. */
    LOAD("load"),
    /** It lies in shade at all hours of feeding. */
    SHADED("shaded"),
    /** It is no hotter at the hours of feeding than the places are now. */
    HEAT("heat"),
    /** It keeps clear of hot wire. */
    HOT_WIRE("hot-wire"),
    /** It keeps away from barriers. */
    BARRIER_DISTANCE("barrier-distance"),
    /** There is room for the deck that comes with it. */
    FREE_SPACE("free-space"),
    /** No animal would get out from the deck that comes with it, by reach or by leap. */
    WAY_OUT("way-out");

    private final String word;

    PlacingRule(String word) {
        this.word = word;
    }

    /**
     * The word.
     *
     * @return lower-case words joined by hyphens
     */
    public String word() {
        return word;
    }
}
