package limbway.reports.scene;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.reports.data.Json;

/**
 * Writes scenes of named nodes as one binary file: a header, a chunk of JSON and a chunk of numbers.
 *
 * @source glTF 2.0, section 4 (GLB file format)
 */
final class GlbWriter {

    private static final int MAGIC = 0x46546C67;
    private static final int VERSION = 2;
    private static final int JSON_CHUNK = 0x4E4F534A;
    private static final int BINARY_CHUNK = 0x004E4942;
    private static final int HEADER_BYTES = 12;
    private static final int CHUNK_HEADER_BYTES = 8;
    private static final int ALIGNMENT = 4;

    private final Map<String, List<SceneNode>> scenes;
    private final BinaryBuffer buffer = new BinaryBuffer();
    private final List<Map<String, Object>> nodes = new ArrayList<>();
    private final List<Map<String, Object>> meshes = new ArrayList<>();
    private final List<Finish> finishes = new ArrayList<>();

    /** Numbers of root nodes; looked up only, so that scenes can share them. */
    private final IdentityHashMap<SceneNode, Integer> roots = new IdentityHashMap<>();

    /** Scenes by name, each with its root nodes; the first is the one that is shown. */
    GlbWriter(Map<String, List<SceneNode>> scenes) {
        this.scenes = scenes;
    }

    byte[] bytes() {
        List<Map<String, Object>> described = new ArrayList<>();
        scenes.forEach((name, shown) -> described.add(
                object("name", name, "nodes", shown.stream().map(this::root).toList())));
        Map<String, Object> file = new LinkedHashMap<>();
        file.put("asset", object("version", "2.0", "generator", "limbway"));
        file.put("scene", 0);
        file.put("scenes", described);
        file.put("nodes", nodes);
        file.put("meshes", meshes);
        file.put("materials", finishes.stream().map(GlbWriter::material).toList());
        file.put("accessors", buffer.accessors());
        file.put("bufferViews", buffer.views());
        file.put("buffers", List.of(object("byteLength", buffer.length())));
        return framed(Json.text(file).getBytes(StandardCharsets.UTF_8));
    }

    private byte[] framed(byte[] json) {
        int jsonBytes = padded(json.length);
        int numberBytes = padded(buffer.length());
        ByteBuffer file = ByteBuffer.allocate(HEADER_BYTES + 2 * CHUNK_HEADER_BYTES + jsonBytes + numberBytes)
                .order(ByteOrder.LITTLE_ENDIAN);
        file.putInt(MAGIC).putInt(VERSION).putInt(file.capacity());
        file.putInt(jsonBytes).putInt(JSON_CHUNK).put(json);
        byte[] spaces = new byte[jsonBytes - json.length];
        Arrays.fill(spaces, (byte) ' ');
        file.put(spaces).putInt(numberBytes).putInt(BINARY_CHUNK);
        buffer.copyTo(file);
        return file.array();
    }

    private static int padded(int bytes) {
        return (bytes + ALIGNMENT - 1) / ALIGNMENT * ALIGNMENT;
    }

    private int root(SceneNode node) {
        Integer known = roots.get(node);
        if (known != null) {
            return known;
        }
        int number = node(node);
        roots.put(node, number);
        return number;
    }

    private int node(SceneNode node) {
        List<Integer> children = node.children().stream().map(this::node).toList();
        Map<String, Object> object = object("name", node.name(), "extras", node.extras());
        if (!children.isEmpty()) {
            object.put("children", children);
        }
        if (!node.parts().isEmpty()) {
            object.put("mesh", meshes.size());
            meshes.add(object(
                    "name",
                    node.name(),
                    "primitives",
                    node.parts().stream().map(this::primitive).toList()));
        }
        nodes.add(object);
        return nodes.size() - 1;
    }

    private Map<String, Object> primitive(Part part) {
        Map<String, Object> primitive = new LinkedHashMap<>();
        primitive.put("attributes", buffer.attributes(part.mesh().vertices));
        primitive.put("indices", buffer.indices(part.mesh().indices));
        if (!finishes.contains(part.finish())) {
            finishes.add(part.finish());
        }
        primitive.put("material", finishes.indexOf(part.finish()));
        primitive.put("mode", part.mesh().drawing.mode);
        return primitive;
    }

    /** Both sides are painted, because a panel or a sheet of water is seen from both. */
    private static Map<String, Object> material(Finish finish) {
        Map<String, Object> paint = object(
                "baseColorFactor", List.of(finish.linear(16), finish.linear(8), finish.linear(0), finish.alpha()));
        paint.put("metallicFactor", 0);
        paint.put("roughnessFactor", 1);
        Map<String, Object> material = object("name", finish.word(), "pbrMetallicRoughness", paint);
        material.put("alphaMode", finish.alpha() < 1 ? "BLEND" : "OPAQUE");
        material.put("doubleSided", true);
        return material;
    }

    private static Map<String, Object> object(String key, Object value) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put(key, value);
        return object;
    }

    private static Map<String, Object> object(String first, Object value, String second, Object other) {
        Map<String, Object> object = object(first, value);
        object.put(second, other);
        return object;
    }
}
