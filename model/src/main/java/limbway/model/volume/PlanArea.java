package limbway.model.volume;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;

import limbway.model.enclosure.Ground;
import limbway.model.enclosure.Obstacle;
import limbway.model.geometry.Outline;

/** An area of the plan with holes, for distances of very many places to it. */
final class PlanArea {

    private final PlanBox box;
    private final double areaM2;
    /** The two ends of each edge of each ring: x, y, x, y. */
    private final double[] edges;

    private PlanArea(Geometry geometry) {
        this.areaM2 = geometry.getArea();
        this.box = PlanBox.of(geometry.getEnvelopeInternal());
        List<Coordinate> ends = new ArrayList<>();
        for (int g = 0; g < geometry.getNumGeometries(); g++) {
            // a difference may leave lines beside its areas
            if (geometry.getGeometryN(g) instanceof Polygon polygon) {
                addRing(polygon.getExteriorRing().getCoordinates(), ends);
                for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
                    addRing(polygon.getInteriorRingN(k).getCoordinates(), ends);
                }
            }
        }
        this.edges = new double[2 * ends.size()];
        for (int i = 0; i < ends.size(); i++) {
            edges[2 * i] = ends.get(i).x;
            edges[2 * i + 1] = ends.get(i).y;
        }
    }

    static PlanArea of(Outline outline) {
        return new PlanArea(outline.toPolygon());
    }

    /** What can be walked on: the outline without the obstacles. */
    static PlanArea of(Ground ground) {
        Geometry area = ground.outline().toPolygon();
        if (!ground.obstacles().isEmpty()) {
            List<Geometry> closed = new ArrayList<>();
            for (Obstacle obstacle : ground.obstacles()) {
                closed.add(obstacle.outline().toPolygon());
            }
            area = area.difference(UnaryUnionOp.union(closed));
        }
        return new PlanArea(area);
    }

    private static void addRing(Coordinate[] ring, List<Coordinate> ends) {
        for (int i = 1; i < ring.length; i++) {
            ends.add(ring[i - 1]);
            ends.add(ring[i]);
        }
    }

    PlanBox box() {
        return box;
    }

    double areaM2() {
        return areaM2;
    }

    /** Whether a place lies within, by counting the edges that a line from it to the east crosses. */
    boolean covers(double xM, double yM) {
        boolean inside = false;
        for (int i = 0; i < edges.length; i += 4) {
            double y0 = edges[i + 1];
            double y1 = edges[i + 3];
            if (y0 > yM != y1 > yM && xM < (edges[i + 2] - edges[i]) * (yM - y0) / (y1 - y0) + edges[i]) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Distance from a place to the area [m], 0 within; infinite if there is no area. */
    double distanceM(double xM, double yM) {
        if (covers(xM, yM)) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < edges.length; i += 4) {
            double dx = edges[i + 2] - edges[i];
            double dy = edges[i + 3] - edges[i + 1];
            double wx = xM - edges[i];
            double wy = yM - edges[i + 1];
            double share = Math.max(0, Math.min(1, (wx * dx + wy * dy) / (dx * dx + dy * dy)));
            double ox = wx - share * dx;
            double oy = wy - share * dy;
            least = Math.min(least, ox * ox + oy * oy);
        }
        return Math.sqrt(least);
    }
}
