package limbway.reports.scene;

import java.util.List;

/**
 * Everything of an enclosure that has one paint, merged into one mesh, in the axes of glTF: x east, y up, z south.
 *
 * <p>Arrays are copied when asked for, so that nobody can change a mesh.
 */
public final class PaintedMesh {

    private final Finish finish;
    private final boolean lines;
    private final float[] places;
    private final float[] normals;
    private final int[] indices;
    private final List<Thing> things;

    /**
     * A run of indices that draws one thing of the enclosure.
     *
     * @param kind what it is, for example {@code pole}
     * @param id its name in the scenario
     * @param first place of its first index
     * @param count how many indices it has
     */
    public record Thing(String kind, String id, int first, int count) {}

    PaintedMesh(Finish finish, boolean lines, float[] places, float[] normals, int[] indices, List<Thing> things) {
        this.finish = finish;
        this.lines = lines;
        this.places = places;
        this.normals = normals;
        this.indices = indices;
        this.things = List.copyOf(things);
    }

    /**
     * What it is painted with.
     *
     * @return lower-case English words, for example {@code steel}
     */
    public String finish() {
        return finish.word();
    }

    /**
     * The colour.
     *
     * @return sRGB, for example {@code #8a9299}
     */
    public String rgb() {
        return finish.hex();
    }

    /**
     * How much is covered of what lies behind.
     *
     * @return above 0 to 1
     */
    public double alpha() {
        return finish.alpha();
    }

    /**
     * Whether it throws a shadow that is worth drawing.
     *
     * @return false for glass, mesh, marks, thin lines and what is only kept free
     */
    public boolean castsShadow() {
        return !lines && finish.castsShadow();
    }

    /**
     * What consecutive indices are joined to.
     *
     * @return true for lines, two indices each; false for triangles, three each
     */
    public boolean isLines() {
        return lines;
    }

    /**
     * The corners.
     *
     * @return {@code places[vertex][axis]} in one row, three for each vertex [m]
     */
    public float[] places() {
        return places.clone();
    }

    /**
     * Where surfaces look to.
     *
     * @return unit vectors, as many as places; empty for lines
     */
    public float[] normals() {
        return normals.clone();
    }

    /**
     * What is joined to what.
     *
     * @return numbers of vertices
     */
    public int[] indices() {
        return indices.clone();
    }

    /**
     * What is drawn.
     *
     * @return things in the order of their indices, without gaps between them
     */
    public List<Thing> things() {
        return things;
    }
}
