package limbway.scenarios.layout;

import java.util.List;
import java.util.Optional;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Ground;
import limbway.model.enclosure.Obstacle;
import limbway.model.enclosure.Platform;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/** What is near a point: ground, decks, supports, crowns. */
final class Surroundings {

    /**
     * The nearest thing.
     *
     * @param what kind and name
     * @param distanceM how far its surface is [m], 0 or more
     */
    record Nearest(String what, double distanceM) {

        Nearest orNearer(String otherWhat, double otherM) {
            return otherM < distanceM ? new Nearest(otherWhat, otherM) : this;
        }
    }

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Ground ground;
    private final Geometry walkable;

    Surroundings(Ground ground) {
        this.ground = ground;
        Geometry area = ground.outline().toPolygon();
        for (Obstacle obstacle : ground.obstacles()) {
            area = area.difference(obstacle.outline().toPolygon());
        }
        this.walkable = area;
    }

    /** Whether a point lies within the outline of the ground, in plan. */
    boolean isWithin(Point p) {
        return ground.outline().covers(p.xM(), p.yM());
    }

    /** The obstacle whose area holds a point, its edge not included, in plan. */
    Optional<Obstacle> obstacleAt(Point p) {
        return ground.obstacles().stream()
                .filter(obstacle -> obstacle.outline().toPolygon().contains(jts(p)))
                .findFirst();
    }

    /** The nearest of all things to a point. */
    Nearest nearest(Point p, List<Built> supports) {
        double besideM = walkable.isEmpty() ? Double.MAX_VALUE : walkable.distance(jts(p));
        Nearest nearest = new Nearest("the ground", Math.hypot(besideM, p.zM()));
        for (Built built : supports) {
            if (built instanceof Built.Deck deck) {
                nearest = nearest.orNearer(deck.entry().what(), distanceM(p, deck.platform()));
            } else if (built instanceof Built.Member member) {
                double axisM = Double.MAX_VALUE;
                for (Segment piece : member.support().axis().pieces()) {
                    axisM = Math.min(axisM, piece.distanceM(p));
                }
                double surfaceM = Math.max(0, axisM - member.support().diameterM() / 2);
                nearest = nearest.orNearer(member.entry().what(), surfaceM);
                if (member.crown().isPresent()) {
                    double crownM = distanceM(p, member.crown().get());
                    nearest = nearest.orNearer("the crown of " + member.entry().what(), crownM);
                }
            }
        }
        return nearest;
    }

    /** How far an outline lies from a point in plan, 0 within. */
    static double planDistanceM(Point p, Outline outline) {
        return outline.covers(p.xM(), p.yM()) ? 0 : outline.toPolygon().distance(jts(p));
    }

    private static double distanceM(Point p, Platform platform) {
        return Math.hypot(planDistanceM(p, platform.outline()), p.zM() - platform.zM());
    }

    private static double distanceM(Point p, Crown crown) {
        double besideM = Math.max(0, crown.foot().planDistanceM(p) - crown.radiusM());
        double aboveM = Math.max(0, Math.max(p.zM() - crown.topZM(), crown.baseZM() - p.zM()));
        return Math.hypot(besideM, aboveM);
    }

    private static org.locationtech.jts.geom.Point jts(Point p) {
        return FACTORY.createPoint(new Coordinate(p.xM(), p.yM()));
    }
}
