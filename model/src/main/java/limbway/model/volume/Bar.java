package limbway.model.volume;

import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/**
 * A round bar: all places within its radius of a straight line, so with round ends.
 *
 * @param axis centre line
 * @param radiusM radius [m], 0 or more
 */
record Bar(Segment axis, double radiusM) implements Shape {

    /**
     * With t along the axis, the top of a sphere of radius R around it stands at z(t) + √(R² − ρ(t)²) above the place,
     * where ρ(t)² = ρ₀² + m² (t − t₀)² is the distance seen from above and m the plan length. That is concave in t; its
     * greatest value lies at m (t − t₀) = c Δz / L with c² = R² − ρ₀² and L the length, or at the nearest end.
     */
    @Override
    public void addReached(double xM, double yM, double reachM, Spans spans) {
        Point a = axis.a();
        double dx = axis.b().xM() - a.xM();
        double dy = axis.b().yM() - a.yM();
        double dz = axis.b().zM() - a.zM();
        double planM = Math.sqrt(dx * dx + dy * dy);
        double wholeM = radiusM + reachM;
        if (planM < 1e-9) {
            double outM2 = (xM - a.xM()) * (xM - a.xM()) + (yM - a.yM()) * (yM - a.yM());
            if (outM2 <= wholeM * wholeM) {
                double half = Math.sqrt(wholeM * wholeM - outM2);
                spans.add(Math.min(0, dz) + a.zM() - half, Math.max(0, dz) + a.zM() + half);
            }
            return;
        }
        double along = ((xM - a.xM()) * dx + (yM - a.yM()) * dy) / planM;
        double aside = ((xM - a.xM()) * dy - (yM - a.yM()) * dx) / planM;
        double c2 = wholeM * wholeM - aside * aside;
        if (c2 < 0) {
            return;
        }
        double c = Math.sqrt(c2);
        double first = Math.max(0, along - c);
        double last = Math.min(planM, along + c);
        if (first > last) {
            return;
        }
        double tilt = c * dz / Math.sqrt(planM * planM + dz * dz);
        double slope = dz / planM;
        double upper = Math.max(first, Math.min(last, along + tilt));
        double lower = Math.max(first, Math.min(last, along - tilt));
        spans.add(a.zM() + lower * slope - halfM(c2, lower - along), a.zM() + upper * slope + halfM(c2, upper - along));
    }

    private static double halfM(double c2, double u) {
        return Math.sqrt(Math.max(0, c2 - u * u));
    }

    @Override
    public Point nearestTo(Point place) {
        return axis.at(axis.nearestShare(place));
    }

    @Override
    public double planDistanceM(double xM, double yM) {
        Segment plan = new Segment(axis.a().atHeight(0), axis.b().atHeight(0));
        return Math.max(0, plan.distanceM(new Point(xM, yM, 0)) - radiusM);
    }

    @Override
    public PlanBox planBox() {
        return new PlanBox(
                Math.min(axis.a().xM(), axis.b().xM()) - radiusM,
                Math.min(axis.a().yM(), axis.b().yM()) - radiusM,
                Math.max(axis.a().xM(), axis.b().xM()) + radiusM,
                Math.max(axis.a().yM(), axis.b().yM()) + radiusM);
    }
}
