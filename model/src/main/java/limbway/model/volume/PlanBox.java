package limbway.model.volume;

import org.locationtech.jts.geom.Envelope;

/**
 * An upright rectangle of the plan.
 *
 * @param westM west edge [m]
 * @param southM south edge [m]
 * @param eastM east edge [m], not below {@code westM}
 * @param northM north edge [m], not below {@code southM}
 */
record PlanBox(double westM, double southM, double eastM, double northM) {

    static PlanBox of(Envelope envelope) {
        return new PlanBox(envelope.getMinX(), envelope.getMinY(), envelope.getMaxX(), envelope.getMaxY());
    }

    PlanBox with(PlanBox other) {
        return new PlanBox(
                Math.min(westM, other.westM),
                Math.min(southM, other.southM),
                Math.max(eastM, other.eastM),
                Math.max(northM, other.northM));
    }

    boolean covers(double xM, double yM) {
        return xM >= westM && xM <= eastM && yM >= southM && yM <= northM;
    }

    double widthM() {
        return eastM - westM;
    }

    double depthM() {
        return northM - southM;
    }
}
