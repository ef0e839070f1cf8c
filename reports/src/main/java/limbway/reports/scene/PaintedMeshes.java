package limbway.reports.scene;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Enclosure;

/** An enclosure as few meshes, one for each paint, for pictures that are drawn anew many times a second. */
public final class PaintedMeshes {

    private final Map<Finish, Gathered> triangles = new TreeMap<>();
    private final Map<Finish, Gathered> lines = new TreeMap<>();

    private PaintedMeshes() {}

    /**
     * Everything that stands there.
     *
     * @param enclosure an enclosure
     * @return meshes of triangles and then of lines, each in a fixed order of paints
     */
    public static List<PaintedMesh> of(Enclosure enclosure) {
        PaintedMeshes meshes = new PaintedMeshes();
        EnclosureGlb.things(enclosure, Roundness.QUICK).children().forEach(meshes::add);
        List<PaintedMesh> found = new ArrayList<>();
        meshes.triangles.forEach((finish, gathered) -> found.add(gathered.mesh(finish, false)));
        meshes.lines.forEach((finish, gathered) -> found.add(gathered.mesh(finish, true)));
        return found;
    }

    /**
     * The colour in which moves of one kind are drawn.
     *
     * @param mode how a move is made
     * @return sRGB, for example {@code #8c7a3d}
     */
    public static String rgb(LocomotorMode mode) {
        return Finish.of(mode).hex();
    }

    private void add(SceneNode node) {
        for (Part part : node.parts()) {
            boolean drawnAsLines = part.mesh().drawing == Mesh.Drawing.LINES;
            (drawnAsLines ? lines : triangles)
                    .computeIfAbsent(part.finish(), finish -> new Gathered())
                    .add(node, part.mesh());
        }
        node.children().forEach(this::add);
    }

    /** Grows by one thing at a time. */
    private static final class Gathered {

        private float[] places = new float[0];
        private float[] normals = new float[0];
        private int[] indices = new int[0];
        private final List<PaintedMesh.Thing> things = new ArrayList<>();

        void add(SceneNode node, Mesh mesh) {
            int firstVertex = places.length / 3;
            int first = indices.length;
            places = joined(places, mesh.vertices.places);
            normals = joined(normals, mesh.vertices.normals);
            indices = Arrays.copyOf(indices, first + mesh.indices.length);
            for (int i = 0; i < mesh.indices.length; i++) {
                indices[first + i] = firstVertex + mesh.indices[i];
            }
            things.add(
                    new PaintedMesh.Thing((String) node.extras().get("kind"), node.name(), first, mesh.indices.length));
        }

        PaintedMesh mesh(Finish finish, boolean asLines) {
            return new PaintedMesh(finish, asLines, places, normals, indices, things);
        }

        private static float[] joined(float[] one, float[] other) {
            float[] both = Arrays.copyOf(one, one.length + other.length);
            System.arraycopy(other, 0, both, one.length, other.length);
            return both;
        }
    }
}
