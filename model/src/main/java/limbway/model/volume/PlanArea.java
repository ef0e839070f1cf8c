package limbway.model.volume;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/** An area of the plan with holes, for distances of very many places to it. */
final class PlanArea {

    private final PlanBox box;
    private final double areaM2;
    /** The two ends of each edge of each ring: x, y, x, y. */
    private final double[] edges;

    PlanArea(Geometry geometry) {
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

    private static void addRing(Coordinate[] ring, List<Coordinate> ends) {
        for (int i = 1; i < ring.length; i++) {
            ends.add(ring[i - 1]);
            ends.add(ring[i]);
        }
    }

    /** The edges of all rings, at height 0. */
    List<Segment> edges() {
        List<Segment> lines = new ArrayList<>();
        for (int i = 0; i < edges.length; i += 4) {
            lines.add(new Segment(new Point(edges[i], edges[i + 1], 0), new Point(edges[i + 2], edges[i + 3], 0)));
        }
        return lines;
    }

    /** Where the line (x, y) + t (dx, dy) crosses the edges: writes each t, in no order, and returns how many. */
    int crossings(double xM, double yM, double dx, double dy, double[] out) {
        int found = 0;
        for (int i = 0; i < edges.length; i += 4) {
            double one = dx * (edges[i + 1] - yM) - dy * (edges[i] - xM);
            double other = dx * (edges[i + 3] - yM) - dy * (edges[i + 2] - xM);
            if (one > 0 != other > 0) {
                double share = one / (one - other);
                double atX = edges[i] + share * (edges[i + 2] - edges[i]);
                double atY = edges[i + 1] + share * (edges[i + 3] - edges[i + 1]);
                out[found++] = ((atX - xM) * dx + (atY - yM) * dy) / (dx * dx + dy * dy);
            }
        }
        return found;
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
        return covers(xM, yM) ? 0 : Math.sqrt(nearestEdge(xM, yM, new double[2]));
    }

    /** The place of the area that is nearest, at height 0; there must be some area. */
    Point nearestTo(double xM, double yM) {
        if (covers(xM, yM)) {
            return new Point(xM, yM, 0);
        }
        double[] to = new double[2];
        nearestEdge(xM, yM, to);
        return new Point(xM - to[0], yM - to[1], 0);
    }

    /** Square of the distance from the nearest edge; the way from there is written to {@code fromEdge}. */
    private double nearestEdge(double xM, double yM, double[] fromEdge) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < edges.length; i += 4) {
            double dx = edges[i + 2] - edges[i];
            double dy = edges[i + 3] - edges[i + 1];
            double wx = xM - edges[i];
            double wy = yM - edges[i + 1];
            double share = Math.max(0, Math.min(1, (wx * dx + wy * dy) / (dx * dx + dy * dy)));
            double ox = wx - share * dx;
            double oy = wy - share * dy;
            if (ox * ox + oy * oy < least) {
                least = ox * ox + oy * oy;
                fromEdge[0] = ox;
                fromEdge[1] = oy;
            }
        }
        return least;
    }

    /** Whether a straight line between two places crosses an edge; one that only touches it does not. */
    boolean edgeBetween(double ax, double ay, double bx, double by) {
        double wayX = bx - ax;
        double wayY = by - ay;
        for (int i = 0; i < edges.length; i += 4) {
            double fromSide = wayX * (edges[i + 1] - ay) - wayY * (edges[i] - ax);
            double toSide = wayX * (edges[i + 3] - ay) - wayY * (edges[i + 2] - ax);
            if (fromSide > 0 != toSide > 0) {
                double dx = edges[i + 2] - edges[i];
                double dy = edges[i + 3] - edges[i + 1];
                double startSide = dx * (ay - edges[i + 1]) - dy * (ax - edges[i]);
                double endSide = dx * (by - edges[i + 1]) - dy * (bx - edges[i]);
                if (startSide > 0 != endSide > 0) {
                    return true;
                }
            }
        }
        return false;
    }
}
