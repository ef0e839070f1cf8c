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

    double widthM() {
        return eastM - westM;
    }

    double depthM() {
        return northM - southM;
    }
}
