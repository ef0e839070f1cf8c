package limbway.reports.scene;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

import limbway.model.geometry.Facet;
import limbway.model.geometry.Point;

/** A panel without thickness. */
final class Sheet {

    private Sheet() {}

    /** A flat polygon anywhere in space, through its own corners. */
    static Mesh of(Facet facet) {
        Point normal = facet.normal();
        Point u = Vectors.across(normal);
        Point w = Vectors.cross(normal, u);
        Map<Coordinate, Point> corners = new LinkedHashMap<>();
        for (Point corner : facet.corners()) {
            corners.put(new Coordinate(corner.dot(u), corner.dot(w)), corner);
        }
        MeshBuilder mesh = new MeshBuilder();
        for (Coordinate[] triangle : Triangulation.of(polygon(List.copyOf(corners.keySet())))) {
            mesh.fan(normal, List.of(corners.get(triangle[0]), corners.get(triangle[1]), corners.get(triangle[2])));
        }
        return mesh.triangles();
    }

    private static Polygon polygon(List<Coordinate> corners) {
        Coordinate[] ring = new Coordinate[corners.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            ring[i] = corners.get(i % corners.size()).copy();
        }
        return new GeometryFactory().createPolygon(ring);
    }
}
