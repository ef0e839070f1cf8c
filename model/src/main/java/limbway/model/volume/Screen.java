package limbway.model.volume;

import limbway.model.geometry.Point;

/** Something through which no hand reaches. */
interface Screen {

    /**
     * Whether it stands between what a body is on and a place.
     *
     * @param from where the hand comes from
     * @param to what it would reach
     * @return true if the straight line is blocked
     */
    boolean hides(Point from, Point to);

    /** What it covers, for finding it. */
    Shape shape();
}
