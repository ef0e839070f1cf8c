package limbway.model.graph;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;

import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.geometry.Terrain;
import limbway.model.geometry.Triangle;

/**
 * A terrain as plane faces and the seams between them: triangles that share a side and lie in one plane are one face.
 */
final class TerrainFaces {

    /** Corners may lie this far above or below the plane of the first triangle of their face. */
    private static final double SAME_PLANE_M = 1e-6;

    private static final int NONE = -1;

    /**
     * A side along which two faces meet.
     *
     * @param line the side in space
     * @param faces numbers of the faces, two or, where triangles overlap, more
     * @param narrowestM how far one can walk away from it within the narrower of the triangles beside it [m]
     */
    record Seam(Segment line, List<Integer> faces, double narrowestM) {}

    private final GeometryFactory factory = new GeometryFactory();
    private final List<Triangle> triangles;
    private final Map<List<Point>, List<Integer>> trianglesAt = new LinkedHashMap<>();
    private final int[] faceOf;
    private int faces;

    TerrainFaces(Terrain terrain) {
        triangles = terrain.triangles();
        for (int t = 0; t < triangles.size(); t++) {
            for (Segment side : sides(triangles.get(t))) {
                trianglesAt.computeIfAbsent(key(side), k -> new ArrayList<>(2)).add(t);
            }
        }
        faceOf = new int[triangles.size()];
        Arrays.fill(faceOf, NONE);
        for (int t = 0; t < faceOf.length; t++) {
            if (faceOf[t] == NONE) {
                flood(t, faces++);
            }
        }
    }

    private void flood(int first, int face) {
        Deque<Integer> open = new ArrayDeque<>(List.of(first));
        faceOf[first] = face;
        while (!open.isEmpty()) {
            for (Segment side : sides(triangles.get(open.pop()))) {
                for (int other : trianglesAt.get(key(side))) {
                    if (faceOf[other] == NONE && liesInPlaneOf(triangles.get(first), triangles.get(other))) {
                        faceOf[other] = face;
                        open.push(other);
                    }
                }
            }
        }
    }

    private static boolean liesInPlaneOf(Triangle plane, Triangle other) {
        return corners(other).stream().allMatch(p -> Math.abs(plane.heightM(p.xM(), p.yM()) - p.zM()) <= SAME_PLANE_M);
    }

    /** The outline of each face in plan, by its number. */
    List<Geometry> outlines() {
        List<List<Geometry>> parts = new ArrayList<>();
        for (int f = 0; f < faces; f++) {
            parts.add(new ArrayList<>());
        }
        for (int t = 0; t < faceOf.length; t++) {
            parts.get(faceOf[t]).add(inPlan(triangles.get(t)));
        }
        return parts.stream()
                .map(part -> part.size() == 1 ? part.get(0) : UnaryUnionOp.union(part))
                .toList();
    }

    /** All sides along which faces meet, in the order of the triangles. */
    List<Seam> seams() {
        List<Seam> seams = new ArrayList<>();
        trianglesAt.forEach((ends, beside) -> {
            List<Integer> meeting =
                    beside.stream().map(t -> faceOf[t]).distinct().toList();
            if (meeting.size() > 1) {
                Segment line = new Segment(ends.get(0), ends.get(1));
                double narrowestM = beside.stream()
                        .mapToDouble(t -> inPlan(triangles.get(t)).getArea()
                                * 2
                                / line.a().planDistanceM(line.b()))
                        .min()
                        .orElse(0);
                seams.add(new Seam(line, meeting, narrowestM));
            }
        });
        return seams;
    }

    private Polygon inPlan(Triangle t) {
        Coordinate[] ring = {at(t.a()), at(t.b()), at(t.c()), at(t.a())};
        return factory.createPolygon(ring);
    }

    private static Coordinate at(Point p) {
        return new Coordinate(p.xM(), p.yM());
    }

    private static List<Point> corners(Triangle t) {
        return List.of(t.a(), t.b(), t.c());
    }

    private static List<Segment> sides(Triangle t) {
        return List.of(new Segment(t.a(), t.b()), new Segment(t.b(), t.c()), new Segment(t.c(), t.a()));
    }

    /** The ends of a side, west before east and south before north, as whole micrometres. */
    private static List<Point> key(Segment side) {
        Point a = rounded(side.a());
        Point b = rounded(side.b());
        boolean inOrder = a.xM() < b.xM() || (a.xM() == b.xM() && a.yM() < b.yM());
        return inOrder ? List.of(a, b) : List.of(b, a);
    }

    private static Point rounded(Point p) {
        return new Point(rounded(p.xM()), rounded(p.yM()), rounded(p.zM()));
    }

    /** Adding 0 turns the negative zero into the positive one, which is another key. */
    private static double rounded(double m) {
        return Math.rint(m / Pieces.SAME_PLACE_M) * Pieces.SAME_PLACE_M + 0.0;
    }
}
