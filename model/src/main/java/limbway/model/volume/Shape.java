package limbway.model.volume;

/** Something a body can be on, for what lies within reach of it. */
interface Shape {

    /**
     * Adds the heights above a place of the plan that lie within reach of the surface.
     *
     * @param xM metres east
     * @param yM metres north
     * @param reachM reach [m], above 0
     * @param spans takes one stretch, or none
     */
    void addReached(double xM, double yM, double reachM, Spans spans);

    /** Distance seen from above between a place and this shape [m], 0 within it. */
    double planDistanceM(double xM, double yM);

    /** A box around this shape, seen from above. */
    PlanBox planBox();
}
