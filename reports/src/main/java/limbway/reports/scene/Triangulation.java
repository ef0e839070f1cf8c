package limbway.reports.scene;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;

/** Divides areas of a plan into triangles, by JTS. */
final class Triangulation {

    private Triangulation() {}

    /**
     * The triangles of a polygon.
     *
     * @param area a polygon that does not cross itself; may have holes
     * @return triangles of three corners each, anticlockwise; every corner is a corner of the polygon
     */
    static List<Coordinate[]> of(Polygon area) {
        List<Coordinate[]> triangles = new ArrayList<>();
        Geometry found = ConstrainedDelaunayTriangulator.triangulate(area);
        for (int i = 0; i < found.getNumGeometries(); i++) {
            Coordinate[] ring = found.getGeometryN(i).getCoordinates();
            boolean anticlockwise = doubleArea(ring) > 0;
            triangles.add(
                    anticlockwise
                            ? new Coordinate[] {ring[0], ring[1], ring[2]}
                            : new Coordinate[] {ring[0], ring[2], ring[1]});
        }
        return triangles;
    }

    private static double doubleArea(Coordinate[] ring) {
        return (ring[1].x - ring[0].x) * (ring[2].y - ring[0].y) - (ring[2].x - ring[0].x) * (ring[1].y - ring[0].y);
    }
}
