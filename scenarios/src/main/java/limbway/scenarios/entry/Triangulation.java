package limbway.scenarios.entry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;

import limbway.model.geometry.Point;
import limbway.model.geometry.Triangle;

/** Lays a sheet of triangles through measured heights. */
final class Triangulation {

    /** Triangles narrower than this at the edge of the sheet are left out [m²]. */
    private static final double LEAST_AREA_M2 = 1e-6;

    private static final Comparator<Point> BY_PLACE =
            Comparator.comparingDouble(Point::xM).thenComparingDouble(Point::yM);

    private Triangulation() {}

    /**
     * The Delaunay triangulation in plan.
     *
     * @param nodes heights, no two at one place, not all in one line
     * @return triangles by the place of their corners, so that their order does not depend on how they were found
     */
    static List<Triangle> of(List<Point> nodes) {
        Map<Coordinate, Point> heights = new TreeMap<>();
        nodes.forEach(p -> heights.put(new Coordinate(p.xM(), p.yM()), p));
        DelaunayTriangulationBuilder builder = new DelaunayTriangulationBuilder();
        builder.setSites(heights.keySet());
        Geometry found = builder.getTriangles(new GeometryFactory());
        List<List<Point>> corners = new ArrayList<>();
        for (int i = 0; i < found.getNumGeometries(); i++) {
            Geometry triangle = found.getGeometryN(i);
            if (triangle.getArea() > LEAST_AREA_M2) {
                corners.add(Arrays.stream(triangle.getCoordinates())
                        .limit(3)
                        .map(heights::get)
                        .sorted(BY_PLACE)
                        .toList());
            }
        }
        corners.sort(Comparator.comparing((List<Point> c) -> c.get(0), BY_PLACE)
                .thenComparing(c -> c.get(1), BY_PLACE)
                .thenComparing(c -> c.get(2), BY_PLACE));
        return corners.stream()
                .map(c -> new Triangle(c.get(0), c.get(1), c.get(2)))
                .toList();
    }

    /**
     * Two triangles for each cell of a grid, divided from its south-west to its north-east corner.
     *
     * @param nodes heights, nodes[row][column], two by two or more, rows from south to north
     * @return triangles row by row
     */
    static List<Triangle> ofGrid(Point[][] nodes) {
        List<Triangle> triangles = new ArrayList<>();
        for (int r = 1; r < nodes.length; r++) {
            for (int c = 1; c < nodes[r].length; c++) {
                Point southWest = nodes[r - 1][c - 1];
                Point northEast = nodes[r][c];
                triangles.add(new Triangle(southWest, nodes[r - 1][c], northEast));
                triangles.add(new Triangle(southWest, northEast, nodes[r][c - 1]));
            }
        }
        return triangles;
    }
}
