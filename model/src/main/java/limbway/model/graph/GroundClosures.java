package limbway.model.graph;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.union.UnaryUnionOp;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.HotWire;
import limbway.model.enclosure.Panel;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.geometry.Terrain;

/**
 * What bars the ground, seen from above: barriers, panels and live wire that come lower over it than a walking animal is
 * high. Where a door is, the ground stays open and the walks through it carry its number.
 */
final class GroundClosures {

    /** An animal on all fours needs so much height: an assumption, about that of a large male's back. */
    static final double WALKING_HEIGHT_M = 1.0;

    /** A sill up to this height is stepped over [m]: an assumption. */
    static final double STEP_M = 0.4;

    private static final double PANEL_HALF_THICKNESS_M = 0.005;
    private static final int STEPS_ALONG_WIRE = 64;

    private final GeometryFactory factory = new GeometryFactory();
    private final Terrain terrain;
    private final List<Doorway> doors;
    private final List<Geometry> holes = new ArrayList<>();

    GroundClosures(Enclosure enclosure) {
        this.terrain = enclosure.ground().terrain();
        this.doors = Obstructions.doorways(enclosure.bounds().doors());
        for (Barrier barrier : enclosure.bounds().barriers()) {
            if (isLow(barrier.footprint().toPolygon(), barrier.baseZM(), barrier.topZM())) {
                add(barrier.id(), barrier.footprint().toPolygon());
            }
        }
        for (Panel panel : enclosure.panels()) {
            add(panel.id(), traceOf(panel.facet().edges()));
        }
        for (HotWire wire : enclosure.bounds().hotWires()) {
            addWire(wire);
        }
    }

    /** Areas that nobody walks over. */
    List<Geometry> holes() {
        return List.copyOf(holes);
    }

    /** The number of the door that a walk passes, 0 for none; a walk through two is none that anyone can count on. */
    int doorOf(Point a, Point b) {
        if (doors.isEmpty()) {
            return Obstructions.FREE;
        }
        LineString way = factory.createLineString(
                new Coordinate[] {new Coordinate(a.xM(), a.yM()), new Coordinate(b.xM(), b.yM())});
        int found = Obstructions.FREE;
        for (Doorway door : doors) {
            if (door.isCrossedBy(way)) {
                found = found == Obstructions.FREE ? door.number() : Obstructions.BLOCKED;
            }
        }
        return found;
    }

    private void add(String id, Geometry closed) {
        Geometry hole = closed;
        for (Doorway door : doors) {
            if (door.in().equals(id) && door.isAtGround(heightAt(door.floor()))) {
                hole = hole.difference(door.floor());
            }
        }
        if (!hole.isEmpty()) {
            holes.add(hole);
        }
    }

    private void addWire(HotWire wire) {
        if (wire instanceof HotWire.Planting planting) {
            Geometry around = planting.footprint().toPolygon().buffer(planting.clearanceM());
            if (isLow(around, planting.baseZM() - planting.clearanceM(), planting.topZM())) {
                add(planting.id(), around);
            }
        } else if (wire instanceof HotWire.Strand strand) {
            Geometry trace = lowPart(strand.line().pieces(), strand.clearanceM());
            if (!trace.isEmpty()) {
                add(strand.id(), trace.buffer(strand.clearanceM()));
            }
        }
    }

    private boolean isLow(Geometry footprint, double baseZM, double topZM) {
        double groundZM = heightAt(footprint);
        return baseZM < groundZM + WALKING_HEIGHT_M && topZM > groundZM - STEP_M;
    }

    private double heightAt(Geometry footprint) {
        Coordinate middle = footprint.getInteriorPoint().getCoordinate();
        return terrain.heightM(middle.x, middle.y);
    }

    /** The plan of the edges of a panel that come low, with what lies between them. */
    private Geometry traceOf(List<Segment> edges) {
        return lowPart(edges, 0).convexHull().buffer(PANEL_HALF_THICKNESS_M, 1);
    }

    private Geometry lowPart(List<Segment> lines, double clearanceM) {
        List<Geometry> low = new ArrayList<>();
        for (Segment line : lines) {
            for (int i = 0; i < STEPS_ALONG_WIRE; i++) {
                Point from = line.at((double) i / STEPS_ALONG_WIRE);
                Point to = line.at((i + 1.0) / STEPS_ALONG_WIRE);
                double heightM = Math.min(from.zM(), to.zM()) - terrain.heightM(from.xM(), from.yM());
                if (heightM - clearanceM < WALKING_HEIGHT_M) {
                    low.add(factory.createLineString(
                            new Coordinate[] {new Coordinate(from.xM(), from.yM()), new Coordinate(to.xM(), to.yM())}));
                }
            }
        }
        return low.isEmpty() ? factory.createLineString() : UnaryUnionOp.union(low);
    }
}
