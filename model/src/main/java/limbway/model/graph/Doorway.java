package limbway.model.graph;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

import limbway.model.enclosure.Door;
import limbway.model.geometry.Point;

/** The opening of a door, as deep as any wall. */
final class Doorway {

    private static final double DEPTH_M = 0.5;
    private static final double SLACK_M = 1e-6;

    /** The sill reaches so far into the wall on both sides that no walk slips by along a jamb. */
    private static final double INTO_JAMB_M = 0.01;

    private final Door door;
    private final int number;
    private final LineString sill;
    private final Polygon floor;

    Doorway(Door door, int number) {
        this.door = door;
        this.number = number;
        Coordinate a = new Coordinate(door.sill().a().xM(), door.sill().a().yM());
        Coordinate b = new Coordinate(door.sill().b().xM(), door.sill().b().yM());
        double acrossX = -(b.y - a.y) / a.distance(b) * DEPTH_M;
        double acrossY = (b.x - a.x) / a.distance(b) * DEPTH_M;
        GeometryFactory factory = new GeometryFactory();
        double alongX = (b.x - a.x) / a.distance(b) * INTO_JAMB_M;
        double alongY = (b.y - a.y) / a.distance(b) * INTO_JAMB_M;
        this.sill = factory.createLineString(
                new Coordinate[] {new Coordinate(a.x - alongX, a.y - alongY), new Coordinate(b.x + alongX, b.y + alongY)
                });
        Coordinate first = new Coordinate(a.x + acrossX, a.y + acrossY);
        this.floor = factory.createPolygon(new Coordinate[] {
            first,
            new Coordinate(b.x + acrossX, b.y + acrossY),
            new Coordinate(b.x - acrossX, b.y - acrossY),
            new Coordinate(a.x - acrossX, a.y - acrossY),
            first
        });
    }

    /** From 1. */
    int number() {
        return number;
    }

    String in() {
        return door.in();
    }

    /** The floor of the opening, in plan. */
    Polygon floor() {
        return floor;
    }

    boolean isAtGround(double groundZM) {
        return door.sill().a().zM() <= groundZM + GroundClosures.STEP_M;
    }

    /** Whether a place on the wall lies in the opening. */
    boolean covers(Point place) {
        return isAtHeight(place.zM())
                && floor.buffer(SLACK_M).covers(floor.getFactory().createPoint(new Coordinate(place.xM(), place.yM())));
    }

    /** Whether a way through a wall passes through the opening only. */
    boolean covers(Geometry insideWall, double lowZM, double highZM) {
        return isAtHeight(lowZM) && isAtHeight(highZM) && floor.buffer(SLACK_M).covers(insideWall);
    }

    /** Whether a way on the ground steps over the sill. */
    boolean isCrossedBy(Geometry way) {
        return sill.intersects(way);
    }

    private boolean isAtHeight(double zM) {
        double sillZM = door.sill().a().zM();
        return zM >= sillZM - SLACK_M && zM <= sillZM + door.heightM() + SLACK_M;
    }
}
