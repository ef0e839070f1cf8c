package limbway.model.graph;

import limbway.model.body.Body;

/**
 * What a body holds on to or stands on during a move.
 *
 * @param standing whether it is a level surface to stand on: ground or platform
 * @param diameterM thickness of a piece of support [m]; 0 where it does not matter
 * @param rough whether a stem too thick to grip can be hugged
 * @param slopeDeg slope of a piece of support [°], 0 to 90
 */
record Carrier(boolean standing, double diameterM, boolean rough, double slopeDeg) {

    /** A beam steeper than this is not walked on. */
    static final double WALKWAY_SLOPE_DEG = 20;

    /** A beam thinner than this is a walkway for no body. */
    private static final double THINNEST_WALKWAY_M = 0.10;

    static final Carrier SURFACE = new Carrier(true, 0, false, 0);
    static final Carrier BRANCHES = new Carrier(false, 0, false, 0);

    static Carrier of(Piece piece) {
        return new Carrier(
                false, piece.stock().diameterM(), piece.stock().material().isRough(), piece.slopeDeg());
    }

    boolean canHold(Body body) {
        return standing || diameterM <= body.gripDiameterM() || (rough && diameterM <= body.hugDiameterM());
    }

    boolean canWalkOn(Body body) {
        return standing || (diameterM >= body.walkwayDiameterM() && slopeDeg <= WALKWAY_SLOPE_DEG);
    }

    /** Whether it is a support that is a walkway for bodies with feet small enough. */
    boolean isWalkway() {
        return slopeDeg <= WALKWAY_SLOPE_DEG && diameterM >= THINNEST_WALKWAY_M;
    }

    boolean canUse(Body body) {
        return canHold(body) || canWalkOn(body);
    }
}
