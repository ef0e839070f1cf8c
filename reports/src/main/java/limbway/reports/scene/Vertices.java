package limbway.reports.scene;

import limbway.model.geometry.Point;

/**
 * Places, and for surfaces the direction that each looks to, in the axes of glTF: x east, y up, z south.
 *
 * <p>The enclosure has x east, y north, z up. Both are right-handed, so that nothing is mirrored by the turn.
 */
final class Vertices {

    final float[] places;

    /** Unit vectors, as many as places; empty for lines. */
    final float[] normals;

    Vertices(float[] places, float[] normals) {
        this.places = places;
        this.normals = normals;
    }

    int count() {
        return places.length / 3;
    }

    /** Writes a point or direction of the enclosure as three numbers in the axes of glTF. */
    static void turn(Point p, float[] into, int vertex) {
        into[3 * vertex] = (float) p.xM();
        into[3 * vertex + 1] = (float) p.zM();
        // 0 - y instead of -y: no negative zero
        into[3 * vertex + 2] = (float) (0 - p.yM());
    }
}
