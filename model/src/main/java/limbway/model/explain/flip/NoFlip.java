package limbway.model.explain.flip;

/**
 * A kind of change of which none turns the trip.
 *
 * @param kind the kind
 * @param why what stands against it
 */
public record NoFlip(FlipKind kind, Why why) {

    /** What stands against a kind of change. */
    public enum Why {
        /** One of both places is used from the ground only. */
        USED_FROM_GROUND,
        /** More than one thing is missing, and one change mends only one of them. */
        SEVERAL_THINGS_MISSING,
        /** Nothing at the gap has a free end or can be moved. */
        NOTHING_MOVABLE,
        /** None that was tried is enough. */
        NOT_ENOUGH,
        /** So large a layout takes too long; the rest was not tried. */
        CUT_SHORT
    }
}
