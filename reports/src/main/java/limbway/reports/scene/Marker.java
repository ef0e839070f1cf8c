package limbway.reports.scene;

import limbway.model.geometry.Point;

/** A small eight-sided stone that marks a place. */
final class Marker {

    private static final double RADIUS_M = 0.15;

    private Marker() {}

    static Mesh at(Point place) {
        Point top = place.plus(new Point(0, 0, RADIUS_M));
        Point bottom = place.plus(new Point(0, 0, -RADIUS_M));
        Point[] round = {
            place.plus(new Point(RADIUS_M, 0, 0)),
            place.plus(new Point(0, RADIUS_M, 0)),
            place.plus(new Point(-RADIUS_M, 0, 0)),
            place.plus(new Point(0, -RADIUS_M, 0))
        };
        MeshBuilder mesh = new MeshBuilder();
        for (int i = 0; i < round.length; i++) {
            Point next = round[(i + 1) % round.length];
            mesh.flat(round[i], next, top);
            mesh.flat(next, round[i], bottom);
        }
        return mesh.triangles();
    }
}
