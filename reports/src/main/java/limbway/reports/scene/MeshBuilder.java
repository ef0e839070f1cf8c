package limbway.reports.scene;

import java.util.ArrayList;
import java.util.List;

import limbway.model.geometry.Point;

/** Gathers triangles of one surface. Corners run anticlockwise, seen from the side that is looked at. */
final class MeshBuilder {

    private final List<Point> places = new ArrayList<>();
    private final List<Point> normals = new ArrayList<>();
    private final List<Integer> indices = new ArrayList<>();

    /** Adds a vertex and returns its number. */
    int vertex(Point place, Point normal) {
        places.add(place);
        normals.add(normal);
        return places.size() - 1;
    }

    void triangle(int a, int b, int c) {
        indices.addAll(List.of(a, b, c));
    }

    /** Adds a flat polygon without a dent, as a fan about its first corner. */
    void fan(Point normal, List<Point> corners) {
        int first = places.size();
        for (Point corner : corners) {
            vertex(corner, normal);
        }
        for (int i = 1; i + 1 < corners.size(); i++) {
            triangle(first, first + i, first + i + 1);
        }
    }

    /** Adds a triangle that looks to where its corners run anticlockwise. */
    void flat(Point a, Point b, Point c) {
        fan(Vectors.unit(Vectors.cross(b.minus(a), c.minus(a))), List.of(a, b, c));
    }

    Mesh triangles() {
        float[] turned = new float[3 * places.size()];
        float[] turnedNormals = new float[3 * places.size()];
        for (int i = 0; i < places.size(); i++) {
            Vertices.turn(places.get(i), turned, i);
            Vertices.turn(normals.get(i), turnedNormals, i);
        }
        return new Mesh(
                Mesh.Drawing.TRIANGLES,
                new Vertices(turned, turnedNormals),
                indices.stream().mapToInt(i -> i).toArray());
    }
}
