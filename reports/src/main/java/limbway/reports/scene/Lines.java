package limbway.reports.scene;

import java.util.List;

import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/** Thin lines. */
final class Lines {

    private Lines() {}

    static Mesh of(List<Segment> segments) {
        float[] places = new float[6 * segments.size()];
        int[] indices = new int[2 * segments.size()];
        for (int i = 0; i < segments.size(); i++) {
            Vertices.turn(segments.get(i).a(), places, 2 * i);
            Vertices.turn(segments.get(i).b(), places, 2 * i + 1);
            indices[2 * i] = 2 * i;
            indices[2 * i + 1] = 2 * i + 1;
        }
        return new Mesh(Mesh.Drawing.LINES, new Vertices(places, new float[0]), indices);
    }

    /** Vertices for lines, to be shared by meshes that name them by their place in the list. */
    static Vertices vertices(List<Point> points) {
        float[] places = new float[3 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            Vertices.turn(points.get(i), places, i);
        }
        return new Vertices(places, new float[0]);
    }
}
