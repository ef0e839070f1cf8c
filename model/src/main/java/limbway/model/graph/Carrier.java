package limbway.model.graph;

import limbway.model.body.Body;
import limbway.model.enclosure.Panel;
import limbway.model.strength.BearingLoad;

/**
 * What a body holds on to or stands on during a move.
 *
 * @param form what kind of thing it is
 * @param diameterM thickness of what is gripped [m]; 0 where it does not matter
 * @param rough whether a stem too thick to grip can be hugged
 * @param slopeDeg slope of a piece of support or of a panel [°], 0 to 90
 * @param fingersM of a panel, the thickest hook grip of a body whose fingers still go through its openings [m]
 * @param givesNPerM stiffness of branches and nets wherever they are held [N/m]; infinite where it does not matter
 * @param bearsKg heaviest body that it bears [kg]; infinite where no limit is known
 * @param swungM length of the pole below the hold from which it is swayed [m]; 0 where it is not
 * @param swungKg mass of that part of the pole [kg]
 */
record Carrier(
        Form form,
        double diameterM,
        boolean rough,
        double slopeDeg,
        double fingersM,
        double givesNPerM,
        double bearsKg,
        double swungM,
        double swungKg) {

    /** What a carrier is. */
    enum Form {
        /** A level surface to stand on: ground or platform. */
        SURFACE,
        /** The branches of a crown, held anywhere. */
        BRANCHES,
        /** One side of a mesh or net, held anywhere. */
        PANEL,
        /** A straight piece of support. */
        LINE
    }

    /** A beam steeper than this is not walked on. */
    static final double WALKWAY_SLOPE_DEG = 20;

    /** A beam thinner than this is a walkway for no body. */
    private static final double THINNEST_WALKWAY_M = 0.10;

    private static final double NONE = Double.POSITIVE_INFINITY;

    static final Carrier SURFACE = surface(NONE);

    static Carrier branches(double givesNPerM) {
        return new Carrier(Form.BRANCHES, 0, false, 0, 0, givesNPerM, NONE, 0, 0);
    }

    static Carrier surface(double bearsKg) {
        return new Carrier(Form.SURFACE, 0, false, 0, 0, NONE, bearsKg, 0, 0);
    }

    static Carrier of(Piece piece, BearingLoad loads) {
        return new Carrier(
                Form.LINE,
                piece.diameterM(),
                piece.stock().material().isRough(),
                piece.slopeDeg(),
                0,
                NONE,
                piece.limit(loads).heaviestKg(),
                0,
                0);
    }

    static Carrier of(Panel panel, double fingerShare) {
        double uprightDeg = StrictMath.toDegrees(
                StrictMath.acos(Math.min(1, Math.abs(panel.facet().normal().zM()))));
        return new Carrier(
                Form.PANEL,
                panel.strandDiameterM(),
                false,
                uprightDeg,
                panel.openingM() / fingerShare,
                panel.stiffnessNPerM().orElse(NONE),
                NONE,
                0,
                0);
    }

    /** The same pole, swayed by an animal that holds it so far above its foot. */
    Carrier swung(double lengthM, double massKg) {
        return new Carrier(form, diameterM, rough, slopeDeg, fingersM, givesNPerM, bearsKg, lengthM, massKg);
    }

    boolean standing() {
        return form == Form.SURFACE;
    }

    /** Whether a body climbs on it in any direction, paying level way and height apart. */
    boolean isSpread() {
        return form == Form.BRANCHES || form == Form.PANEL;
    }

    boolean canHold(Body body) {
        boolean gripped =
                standing() || diameterM <= body.gripDiameterM() || (rough && diameterM <= body.hugDiameterM());
        boolean fingersFit = form != Form.PANEL || body.gripDiameterM() <= fingersM;
        return bears(body) && gripped && fingersFit;
    }

    boolean canWalkOn(Body body) {
        boolean broad = form == Form.LINE && diameterM >= body.walkwayDiameterM() && slopeDeg <= WALKWAY_SLOPE_DEG;
        return bears(body) && (standing() || broad);
    }

    /** Whether it is a support that is a walkway for bodies with feet small enough. */
    boolean isWalkway() {
        return form == Form.LINE && slopeDeg <= WALKWAY_SLOPE_DEG && diameterM >= THINNEST_WALKWAY_M;
    }

    boolean canUse(Body body) {
        return canHold(body) || canWalkOn(body);
    }

    private boolean bears(Body body) {
        return body.massKg() <= bearsKg;
    }
}
