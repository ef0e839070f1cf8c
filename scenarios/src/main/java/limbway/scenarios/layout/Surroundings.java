package limbway.scenarios.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

import limbway.model.enclosure.Ground;
import limbway.model.enclosure.Obstacle;
import limbway.model.enclosure.Panel;
import limbway.model.geometry.Point;
import limbway.model.geometry.Terrain;

/** What is near a point: ground, decks, supports, crowns, panels. */
final class Surroundings {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Ground ground;
    private final List<PreparedGeometry> obstacles = new ArrayList<>();
    private final PreparedGeometry walkable;
    private final Optional<IndexedFacetDistance> edges;

    Surroundings(Ground ground) {
        this.ground = ground;
        List<Geometry> areas = new ArrayList<>();
        for (Obstacle obstacle : ground.obstacles()) {
            Geometry area = obstacle.outline().toPolygon();
            areas.add(area);
            obstacles.add(PreparedGeometryFactory.prepare(area));
        }
        Geometry open = ground.outline().toPolygon();
        if (!areas.isEmpty()) {
            open = OverlayNGRobust.overlay(open, OverlayNGRobust.union(areas), OverlayNG.DIFFERENCE);
        }
        this.walkable = PreparedGeometryFactory.prepare(open);
        this.edges = open.isEmpty() ? Optional.empty() : Optional.of(new IndexedFacetDistance(open));
    }

    /** Whether a point lies within the outline of the ground, in plan. */
    boolean isWithin(Point p) {
        return ground.outline().covers(p.xM(), p.yM());
    }

    /** The obstacle whose area holds a point, its edge not included, in plan. */
    Optional<Obstacle> obstacleAt(Point p) {
        for (int i = 0; i < obstacles.size(); i++) {
            if (obstacles.get(i).contains(jts(p))) {
                return Optional.of(ground.obstacles().get(i));
            }
        }
        return Optional.empty();
    }

    /** The nearest of all things to a point. */
    Nearest nearest(Point p, List<Extent> things, List<Panel> panels) {
        Nearest nearest = new Nearest("the ground", Math.hypot(besideGroundM(p), aboveGroundM(p)));
        for (Extent thing : things) {
            if (thing.leastDistanceM(p) < nearest.distanceM()) {
                nearest = nearest.orNearer(p, thing.built());
            }
        }
        for (Panel panel : panels) {
            nearest = nearest.orNearer(p, panel);
        }
        return nearest;
    }

    /** How far a point is above the ground, below 0 under it [m]. */
    double aboveGroundM(Point p) {
        return ground.terrain().aboveM(p);
    }

    /** Where a flat shape dips deepest below the ground, if it does. */
    Optional<Burial> deepest(List<Point> corners) {
        Terrain terrain = ground.terrain();
        return terrain.isLevel()
                ? corners.stream()
                        .filter(corner -> corner.zM() < 0)
                        .min(Comparator.comparingDouble(Point::zM))
                        .map(lowest -> new Burial(lowest, -lowest.zM()))
                : Burial.deepest(corners, terrain, Builder.ON_SLOPE_M);
    }

    /** Whether some part of an area lies within the outline of the ground. */
    boolean overlaps(Geometry area) {
        return ground.outline().toPolygon().relate(area, "T********");
    }

    /** Whether some part of what has these corners lies within the outline of the ground, in plan. */
    boolean reaches(List<Point> corners) {
        Coordinate[] ring = Stream.concat(corners.stream(), Stream.of(corners.get(0)))
                .map(corner -> new Coordinate(corner.xM(), corner.yM()))
                .toArray(Coordinate[]::new);
        Geometry area = ground.outline().toPolygon();
        return corners.stream().anyMatch(this::isWithin)
                || FACTORY.createLineString(ring).intersects(area)
                || FACTORY.createPolygon(ring).buffer(0).intersects(area);
    }

    private double besideGroundM(Point p) {
        if (edges.isEmpty()) {
            return Double.MAX_VALUE;
        }
        return walkable.covers(jts(p)) ? 0 : edges.get().distance(jts(p));
    }

    private static org.locationtech.jts.geom.Point jts(Point p) {
        return FACTORY.createPoint(new Coordinate(p.xM(), p.yM()));
    }
}
