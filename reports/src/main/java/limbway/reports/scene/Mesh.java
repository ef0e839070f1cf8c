package limbway.reports.scene;

/**
 * Triangles or lines between vertices.
 *
 * <p>Meshes may share their vertices; those are then written once.
 */
final class Mesh {

    /** What consecutive indices are joined to; the number is that of the specification. */
    enum Drawing {
        LINES(1),
        TRIANGLES(4);

        final int mode;

        Drawing(int mode) {
            this.mode = mode;
        }
    }

    final Drawing drawing;
    final Vertices vertices;
    final int[] indices;

    Mesh(Drawing drawing, Vertices vertices, int[] indices) {
        this.drawing = drawing;
        this.vertices = vertices;
        this.indices = indices;
    }
}
