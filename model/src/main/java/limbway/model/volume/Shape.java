package limbway.model.volume;

import limbway.model.geometry.Point;

/** Something a body can be on, for what lies within reach of it; or a block of space. */
interface Shape {

    /**
     * Adds the heights above a place of the plan that lie within reach of the surface.
     *
     * @param xM metres east
     * @param yM metres north
     * @param reachM reach [m], 0 or more
     * @param spans takes the stretches, one or more, or none
     */
    void addReached(double xM, double yM, double reachM, Spans spans);

    /** Where a body on it is nearest to a place: on the surface or, of a bar, on its centre line. */
    Point nearestTo(Point place);

    /** Distance seen from above between a place and this shape [m], 0 within it. */
    double planDistanceM(double xM, double yM);

    /** A box around this shape, seen from above. */
    PlanBox planBox();
}
