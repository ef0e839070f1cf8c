package limbway.model.explain;

import limbway.model.enclosure.Crown;
import limbway.model.geometry.ClosestApproach;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/**
 * A line with what surrounds it, for distances only: a round bar, the edge of a deck (radius 0), or the axis of a crown.
 *
 * @param line centre line
 * @param radiusM distance from the line to the surface [m], 0 or more
 * @param upright whether it is a cylinder with flat ends, as a crown is; else distances are taken from the line
 */
record Solid(Segment line, double radiusM, boolean upright) {

    private static final int STEPS = 60;

    /** Where two solids come closest, and how far their surfaces are apart. */
    record Nearness(Point onFirst, Point onSecond, double clearM) {

        Nearness reversed() {
            return new Nearness(onSecond, onFirst, clearM);
        }
    }

    static Solid crown(Crown crown) {
        Segment axis =
                new Segment(crown.foot().atHeight(crown.baseZM()), crown.foot().atHeight(crown.topZM()));
        return new Solid(axis, crown.radiusM(), true);
    }

    Nearness to(Solid other) {
        if (!other.upright) {
            return upright ? other.toCylinder(this).reversed() : toBar(other);
        }
        return toCylinder(other);
    }

    private Nearness toBar(Solid bar) {
        ClosestApproach closest = ClosestApproach.of(line, bar.line);
        return new Nearness(
                line.at(closest.shareOnFirst()),
                bar.line.at(closest.shareOnSecond()),
                Math.max(0, closest.distanceM() - radiusM - bar.radiusM));
    }

    /** The distance to a convex body is convex along a line, so cutting the line in three again and again finds it. */
    private Nearness toCylinder(Solid cylinder) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < STEPS; i++) {
            double third = (high - low) / 3;
            boolean left = awayM(cylinder, low + third) <= awayM(cylinder, high - third);
            high = left ? high - third : high;
            low = left ? low : low + third;
        }
        Point place = line.at((low + high) / 2);
        Point nearest = cylinder.nearestTo(place);
        return new Nearness(place, nearest, Math.max(0, nearest.distanceM(place) - radiusM));
    }

    private double awayM(Solid cylinder, double share) {
        Point place = line.at(share);
        return cylinder.nearestTo(place).distanceM(place);
    }

    /** The point of an upright cylinder that is nearest to a point. */
    private Point nearestTo(Point p) {
        double zM = Math.max(line.a().zM(), Math.min(line.b().zM(), p.zM()));
        double outM = p.planDistanceM(line.a());
        return outM <= radiusM ? p.atHeight(zM) : new Segment(line.a().atHeight(zM), p.atHeight(zM)).at(radiusM / outM);
    }

    /** Distance from a point to the surface of this solid. */
    double clearM(Point p) {
        return upright ? nearestTo(p).distanceM(p) : Math.max(0, line.distanceM(p) - radiusM);
    }
}
