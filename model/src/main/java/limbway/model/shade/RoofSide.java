package limbway.model.shade;

/** A side of a deck, seen in the frame of the deck itself: before it is turned, right is east and far is north. */
public enum RoofSide {
    /** Where the first axis of the deck points: east of a deck that is not turned. */
    RIGHT(0),
    /** Where the second axis of the deck points: north of a deck that is not turned. */
    FAR(90),
    /** Against the first axis: west of a deck that is not turned. */
    LEFT(180),
    /** Against the second axis: south of a deck that is not turned. */
    NEAR(270);

    private final int anticlockwiseDeg;

    RoofSide(int anticlockwiseDeg) {
        this.anticlockwiseDeg = anticlockwiseDeg;
    }

    /**
     * Which way the side faces, measured anticlockwise from the first axis of the deck.
     *
     * @return degrees, a multiple of 90
     */
    public int anticlockwiseDeg() {
        return anticlockwiseDeg;
    }
}
