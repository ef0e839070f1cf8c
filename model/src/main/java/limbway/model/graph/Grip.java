package limbway.model.graph;

/**
 * One end of a move between two things.
 *
 * @param hold number of the hold
 * @param carrier what is held or stood on there
 * @param radiusM how far its surface lies from the hold [m], 0 or more
 * @param stiffnessNPerM force for each metre that it gives there [N/m]; infinite where it does not
 */
record Grip(int hold, Carrier carrier, double radiusM, double stiffnessNPerM) {

    /** A hold on something that does not give and whose surface is where the hold is. */
    static Grip rigid(int hold, Carrier carrier) {
        return new Grip(hold, carrier, 0, Stiffness.RIGID);
    }
}
