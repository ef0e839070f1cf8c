package limbway.model.link;

/** Why a pair of places gets no link, in the order in which limits are looked at. */
public enum Limit {
    /** Both ends on one thing. */
    SAME_SUPPORT("both ends on the same support"),
    /** Ends nearer than the least or farther than the greatest length. */
    LENGTH("too short or too long"),
    /** Steeper than allowed. */
    SLOPE("too steep"),
    /** Nearer to the ground than the clearance, or in it. */
    CLEARANCE("too near to the ground"),
    /** Not over the ground of the enclosure. */
    OUTSIDE("not over the ground of the enclosure"),
    /** Through a deck, a panel, a barrier, a building or another support. */
    BLOCKED("through something that stands there"),
    /** In the space of live wire. */
    WIRE("in the space of live wire"),
    /** Within reach or leap of a line beyond which an animal would be out. */
    ESCAPE("within escape reach of a barrier or the edge");

    private final String words;

    Limit(String words) {
        this.words = words;
    }

    /**
     * What is wrong, as words after a number.
     *
     * @return a clause without a verb
     */
    public String words() {
        return words;
    }
}
