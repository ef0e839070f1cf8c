package limbway.model.explain.flip;

/** A kind of single change that is tried. */
public enum FlipKind {
    /** One more rope. */
    LINK,
    /** The place that the trip leads to is put elsewhere. */
    END,
    /** The place where the trip starts is put elsewhere. */
    START,
    /** A gap is made shorter. */
    GAP,
    /** A support is made thinner. */
    THINNER,
    /** A rope or beam on the way is tied otherwise or pulled tighter. */
    DETOUR
}
