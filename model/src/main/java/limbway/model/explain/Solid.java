package limbway.model.explain;

import limbway.model.enclosure.Crown;
import limbway.model.geometry.ClosestApproach;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.geometry.UprightCylinder;

/**
 * A line with what surrounds it, for distances only: a round bar, the edge of a deck (radius 0), or the axis of a crown.
 *
 * @param line centre line
 * @param radiusM distance from the line to the surface [m], 0 or more
 * @param upright whether it is a cylinder with flat ends, as a crown is; else distances are taken from the line
 */
record Solid(Segment line, double radiusM, boolean upright) {

    /** Where two solids come closest, and how far their surfaces are apart. */
    record Nearness(Point onFirst, Point onSecond, double clearM) {

        Nearness reversed() {
            return new Nearness(onSecond, onFirst, clearM);
        }
    }

    static Solid crown(Crown crown) {
        return new Solid(crown.space().axis(), crown.radiusM(), true);
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

    private Nearness toCylinder(Solid other) {
        UprightCylinder cylinder = other.cylinder();
        Point place = line.at(cylinder.nearestShare(line));
        Point nearest = cylinder.nearestTo(place);
        return new Nearness(place, nearest, Math.max(0, nearest.distanceM(place) - radiusM));
    }

    private UprightCylinder cylinder() {
        return new UprightCylinder(line, radiusM);
    }

    /** Distance from a point to the surface of this solid. */
    double clearM(Point p) {
        return upright ? cylinder().distanceM(p) : Math.max(0, line.distanceM(p) - radiusM);
    }
}
