package limbway.model.link;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.body.Body;
import limbway.model.containment.Brink;
import limbway.model.containment.Brinks;
import limbway.model.containment.LiveSpace;
import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.Building;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Support;
import limbway.model.energy.Ballistics;
import limbway.model.geometry.ClosestApproach;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.geometry.Terrain;

/** Finds the first limit that a link breaks. */
final class Fit {

    /** A link passes other supports at least so far away, surface to surface [m]: ropes chafe. Assumption. */
    private static final double APART_M = 0.1;

    /** Nearer to its ends than this a link may meet what its anchor carries [m]. Assumption. */
    private static final double KNOT_M = 0.6;

    /** A link is looked at every so many metres. */
    private static final double STEP_M = 0.1;

    private static final double SLACK_M = 1e-9;

    private final Enclosure enclosure;
    private final Terrain terrain;
    private final List<Body> bodies;
    private final LinkLimits limits;
    private final LiveSpace live;
    private final List<Brink> brinks;
    private final double reachM;
    private final double overheadM;
    private final double takeOffMPerS;

    Fit(Enclosure enclosure, List<Body> bodies, LinkLimits limits) {
        this.enclosure = enclosure;
        this.terrain = enclosure.ground().terrain();
        this.bodies = List.copyOf(bodies);
        this.limits = limits;
        this.live = new LiveSpace(enclosure.bounds().hotWires());
        this.brinks = Brinks.of(enclosure);
        this.reachM = most(Body::gapReachM);
        this.overheadM = most(Body::overheadReachM);
        this.takeOffMPerS = most(Body::takeOffMPerS);
    }

    private double most(java.util.function.ToDoubleFunction<Body> measure) {
        return bodies.stream().mapToDouble(measure).max().orElse(0);
    }

    Optional<Limit> firstBroken(Candidate link) {
        Point a = link.from().at();
        Point b = link.to().at();
        if (link.from().on().equals(link.to().on())) {
            return Optional.of(Limit.SAME_SUPPORT);
        }
        double apartM = a.distanceM(b);
        if (apartM < limits.shortestM() - SLACK_M || apartM > limits.longestM() + SLACK_M) {
            return Optional.of(Limit.LENGTH);
        }
        double slopeDeg = StrictMath.toDegrees(StrictMath.asin(Math.min(1, Math.abs(b.zM() - a.zM()) / apartM)));
        if (slopeDeg > limits.steepestDeg() + SLACK_M) {
            return Optional.of(Limit.SLOPE);
        }
        List<Segment> pieces = link.axis().pieces();
        List<Point> places = places(pieces);
        if (places.stream().anyMatch(place -> terrain.aboveM(place) < limits.clearanceM() - SLACK_M)) {
            return Optional.of(Limit.CLEARANCE);
        }
        Outline ground = enclosure.ground().outline();
        if (places.stream().anyMatch(place -> !ground.covers(place.xM(), place.yM()))) {
            return Optional.of(Limit.OUTSIDE);
        }
        if (isBlocked(link, pieces, places)) {
            return Optional.of(Limit.BLOCKED);
        }
        if (places.stream().anyMatch(live::holds)) {
            return Optional.of(Limit.WIRE);
        }
        return brinks.stream().anyMatch(brink -> places.stream().anyMatch(place -> leadsOut(brink, place, link)))
                ? Optional.of(Limit.ESCAPE)
                : Optional.empty();
    }

    private static List<Point> places(List<Segment> pieces) {
        List<Point> places = new ArrayList<>();
        places.add(pieces.get(0).a());
        for (Segment piece : pieces) {
            List<Point> along = piece.every(STEP_M);
            places.addAll(along.subList(1, along.size()));
        }
        return places;
    }

    private boolean isBlocked(Candidate link, List<Segment> pieces, List<Point> places) {
        for (Segment piece : pieces) {
            for (Platform deck : enclosure.platforms()) {
                if (deck.blocks(piece.a(), piece.b())) {
                    return true;
                }
            }
            for (Panel panel : enclosure.panels()) {
                if (crosses(panel.facet(), piece)) {
                    return true;
                }
            }
            if (touchesSupport(link, piece)) {
                return true;
            }
        }
        for (Barrier barrier : enclosure.bounds().barriers()) {
            if (within(places, barrier.footprint(), barrier.baseZM(), barrier.topZM())) {
                return true;
            }
        }
        for (Building building : enclosure.shading().buildings()) {
            if (within(places, building.footprint(), building.baseZM(), building.topZM())) {
                return true;
            }
        }
        return false;
    }

    private static boolean within(List<Point> places, Outline footprint, double baseZM, double topZM) {
        return places.stream()
                .anyMatch(
                        place -> place.zM() > baseZM && place.zM() < topZM && footprint.covers(place.xM(), place.yM()));
    }

    private boolean touchesSupport(Candidate link, Segment piece) {
        for (Support support : enclosure.supports()) {
            double leastM = APART_M + (support.diameterM() + link.diameterM()) / 2;
            for (Segment other : support.axis().pieces()) {
                ClosestApproach closest = ClosestApproach.of(piece, other);
                if (closest.distanceM() < leastM) {
                    Point place = piece.at(closest.shareOnFirst());
                    double fromEndM = Math.min(
                            place.distanceM(link.from().at()),
                            place.distanceM(link.to().at()));
                    if (fromEndM > KNOT_M) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    static boolean keepApart(Candidate one, Candidate other) {
        double leastM = APART_M + (one.diameterM() + other.diameterM()) / 2;
        for (Segment piece : one.axis().pieces()) {
            for (Segment beside : other.axis().pieces()) {
                ClosestApproach closest = ClosestApproach.of(piece, beside);
                if (closest.distanceM() < leastM) {
                    Point place = piece.at(closest.shareOnFirst());
                    double fromEndM = Math.min(
                            place.distanceM(one.from().at()),
                            place.distanceM(one.to().at()));
                    if (fromEndM > KNOT_M) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /** By reach, or by leap for a body that leaps; the rule of the audit of barriers, for each place of the link. */
    private boolean leadsOut(Brink brink, Point place, Candidate link) {
        if (brink.anyHeight() && terrain.aboveM(place) <= overheadM) {
            return false;
        }
        Point target = brink.nearestTo(place);
        double radiusM = link.diameterM() / 2;
        if (Math.max(0, place.distanceM(target) - radiusM) <= reachM) {
            return true;
        }
        if (takeOffMPerS == 0) {
            return false;
        }
        double clearM = Math.max(0, place.planDistanceM(target) - radiusM);
        double landingZM = brink.anyHeight() ? terrain.heightM(target.xM(), target.yM()) : target.zM();
        return Ballistics.leastSpeedMPerS(clearM, landingZM - place.zM()) <= takeOffMPerS;
    }

    private static boolean crosses(Facet facet, Segment line) {
        Point normal = facet.normal();
        Point origin = facet.corners().get(0);
        double from = line.a().minus(origin).dot(normal);
        double to = line.b().minus(origin).dot(normal);
        if (from * to > 0 || from == to) {
            return false;
        }
        Point through = line.at(from / (from - to));
        // inside if the corners turn round it once: the sum of the angles that the sides subtend
        double turned = 0;
        List<Point> corners = facet.corners();
        for (int i = 0; i < corners.size(); i++) {
            Point u = corners.get(i).minus(through);
            Point v = corners.get((i + 1) % corners.size()).minus(through);
            Point cross = new Point(
                    u.yM() * v.zM() - u.zM() * v.yM(),
                    u.zM() * v.xM() - u.xM() * v.zM(),
                    u.xM() * v.yM() - u.yM() * v.xM());
            turned += StrictMath.atan2(cross.dot(normal), u.dot(v));
        }
        return Math.abs(turned) > Math.PI;
    }
}
