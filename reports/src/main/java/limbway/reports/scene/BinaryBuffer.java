package limbway.reports.scene;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The numbers of all meshes in one buffer, in three views: places, normals, indices.
 *
 * @source glTF 2.0, sections 3.6.2 (accessors) and 5.1 (constants); all numbers are little-endian and 4 bytes long, so that
 *     every offset is a multiple of 4
 */
final class BinaryBuffer {

    private static final int FLOAT = 5126;
    private static final int UNSIGNED_INT = 5125;
    private static final int ARRAY_BUFFER = 34962;
    private static final int ELEMENT_ARRAY_BUFFER = 34963;
    private static final int BYTES = 4;
    private static final int VECTOR_BYTES = 3 * BYTES;

    private final View places = new View(ARRAY_BUFFER);
    private final View normals = new View(ARRAY_BUFFER);
    private final View indices = new View(ELEMENT_ARRAY_BUFFER);
    private final List<View> views = new ArrayList<>();
    private final List<Map<String, Object>> accessors = new ArrayList<>();

    /** Attributes of vertices that were added; looked up only, never walked through. */
    private final IdentityHashMap<Vertices, Map<String, Object>> added = new IdentityHashMap<>();

    /** Adds vertices, once however often they are asked for, and returns the attributes of a primitive. */
    Map<String, Object> attributes(Vertices vertices) {
        Map<String, Object> known = added.get(vertices);
        if (known != null) {
            return known;
        }
        Map<String, Object> attributes = new LinkedHashMap<>();
        attributes.put("POSITION", vectors(places, vertices.places, true));
        if (vertices.normals.length > 0) {
            attributes.put("NORMAL", vectors(normals, vertices.normals, false));
        }
        added.put(vertices, attributes);
        return attributes;
    }

    /** Adds indices and returns the number of their accessor. */
    int indices(int[] ends) {
        ByteBuffer bytes = ByteBuffer.allocate(BYTES * ends.length).order(ByteOrder.LITTLE_ENDIAN);
        bytes.asIntBuffer().put(ends);
        return accessor(indices, bytes.array(), UNSIGNED_INT, "SCALAR", ends.length);
    }

    List<Map<String, Object>> accessors() {
        return accessors;
    }

    /** The views one after the other, as the file describes them. */
    List<Map<String, Object>> views() {
        List<Map<String, Object>> described = new ArrayList<>();
        int offset = 0;
        for (View view : views) {
            Map<String, Object> object = new LinkedHashMap<>();
            object.put("buffer", 0);
            object.put("byteOffset", offset);
            object.put("byteLength", view.length);
            if (view.target == ARRAY_BUFFER) {
                object.put("byteStride", VECTOR_BYTES);
            }
            object.put("target", view.target);
            described.add(object);
            offset += view.length;
        }
        return described;
    }

    int length() {
        return views.stream().mapToInt(view -> view.length).sum();
    }

    void copyTo(ByteBuffer file) {
        views.forEach(view -> view.pieces.forEach(file::put));
    }

    private int vectors(View view, float[] numbers, boolean bounded) {
        ByteBuffer bytes = ByteBuffer.allocate(BYTES * numbers.length).order(ByteOrder.LITTLE_ENDIAN);
        bytes.asFloatBuffer().put(numbers);
        int accessor = accessor(view, bytes.array(), FLOAT, "VEC3", numbers.length / 3);
        if (bounded) {
            accessors.get(accessor).put("min", bound(numbers, false));
            accessors.get(accessor).put("max", bound(numbers, true));
        }
        return accessor;
    }

    private int accessor(View view, byte[] bytes, int componentType, String type, int count) {
        if (!views.contains(view)) {
            views.add(view);
        }
        Map<String, Object> accessor = new LinkedHashMap<>();
        accessor.put("bufferView", views.indexOf(view));
        accessor.put("byteOffset", view.length);
        accessor.put("componentType", componentType);
        accessor.put("count", count);
        accessor.put("type", type);
        accessors.add(accessor);
        view.pieces.add(bytes);
        view.length += bytes.length;
        return accessors.size() - 1;
    }

    /** A double holds every float exactly, so that a reader gets back the very numbers of the buffer. */
    private static List<Double> bound(float[] numbers, boolean greatest) {
        List<Double> bound = new ArrayList<>();
        for (int axis = 0; axis < 3; axis++) {
            float found = numbers[axis];
            for (int i = axis; i < numbers.length; i += 3) {
                found = greatest ? Math.max(found, numbers[i]) : Math.min(found, numbers[i]);
            }
            bound.add((double) found);
        }
        return bound;
    }

    private static final class View {

        final int target;
        final List<byte[]> pieces = new ArrayList<>();
        int length;

        View(int target) {
            this.target = target;
        }
    }
}
