package limbway.reports.scene;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import limbway.reports.FullYard;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** The file byte by byte against the text of the glTF 2.0 specification, whose sections are named. */
class GlbBytesTest {

    private static final int FLOAT = 5126;
    private static final int UNSIGNED_INT = 5125;
    private static final int ARRAY_BUFFER = 34962;
    private static final int ELEMENT_ARRAY_BUFFER = 34963;

    private static byte[] file;
    private static int jsonBytes;
    private static JsonNode json;
    private static ByteBuffer numbers;

    @BeforeAll
    static void write() throws IOException {
        file = EnclosureGlb.bytes(FullYard.habitat());
        jsonBytes = wholeFile().getInt(12);
        json = new ObjectMapper().readTree(file, 20, jsonBytes);
        numbers =
                wholeFile().slice(28 + jsonBytes, file.length - 28 - jsonBytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static ByteBuffer wholeFile() {
        return ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    }

    /** Section 4.4: magic, version, length; then for each chunk its length, its type and its data, padded to 4 bytes. */
    @Test
    void headerAndChunksAreThoseOfTheContainer() {
        assertEquals("glTF", new String(file, 0, 4, StandardCharsets.US_ASCII));
        assertEquals(2, wholeFile().getInt(4));
        assertEquals(file.length, wholeFile().getInt(8));
        assertEquals("JSON", new String(file, 16, 4, StandardCharsets.US_ASCII));
        assertEquals(0, jsonBytes % 4);
        String text = new String(file, 20, jsonBytes, StandardCharsets.UTF_8);
        assertTrue(text.startsWith("{"));
        // padded by spaces and nothing else
        assertTrue(text.matches("(?s).*}\\n {0,3}"));
        assertEquals("BIN\0", new String(file, 24 + jsonBytes, 4, StandardCharsets.US_ASCII));
        int numberBytes = wholeFile().getInt(20 + jsonBytes);
        assertEquals(0, numberBytes % 4);
        assertEquals(file.length, 28 + jsonBytes + numberBytes);
        int padding = numberBytes - json.at("/buffers/0/byteLength").asInt();
        assertTrue(padding >= 0 && padding < 4, "padding = " + padding);
        assertFalse(json.at("/buffers/0").has("uri"));
    }

    /** Sections 3.6.1 and 3.6.2.4: views lie within the buffer, accessors within their view, all aligned. */
    @Test
    void viewsAndAccessorsLieWithinWhatHoldsThem() {
        for (JsonNode view : json.get("bufferViews")) {
            int end = view.get("byteOffset").asInt() + view.get("byteLength").asInt();
            assertTrue(end <= json.at("/buffers/0/byteLength").asInt(), view.toString());
            assertEquals(0, view.get("byteOffset").asInt() % 4);
            boolean ofVertices = view.get("target").asInt() == ARRAY_BUFFER;
            assertEquals(ofVertices ? 12 : 0, view.path("byteStride").asInt(0), view.toString());
            assertTrue(ofVertices || view.get("target").asInt() == ELEMENT_ARRAY_BUFFER, view.toString());
        }
        for (JsonNode accessor : json.get("accessors")) {
            JsonNode view =
                    json.get("bufferViews").get(accessor.get("bufferView").asInt());
            boolean vectors = accessor.get("type").asText().equals("VEC3");
            assertEquals(
                    vectors ? FLOAT : UNSIGNED_INT,
                    accessor.get("componentType").asInt());
            int end = accessor.get("byteOffset").asInt() + accessor.get("count").asInt() * (vectors ? 12 : 4);
            assertTrue(end <= view.get("byteLength").asInt(), accessor.toString());
            assertEquals(0, accessor.get("byteOffset").asInt() % 4);
            assertTrue(accessor.get("count").asInt() > 0);
        }
    }

    /** Section 3.6.2.5: least and greatest are required of positions, and must be those of the data. */
    @Test
    void leastAndGreatestPlacesAreThoseOfTheNumbers() {
        for (JsonNode primitive : primitives()) {
            int number = primitive.at("/attributes/POSITION").asInt();
            float[] places = vectors(number);
            for (int axis = 0; axis < 3; axis++) {
                float least = Float.POSITIVE_INFINITY;
                float greatest = Float.NEGATIVE_INFINITY;
                for (int i = axis; i < places.length; i += 3) {
                    least = Math.min(least, places[i]);
                    greatest = Math.max(greatest, places[i]);
                }
                JsonNode accessor = json.get("accessors").get(number);
                assertEquals(least, (float) accessor.get("min").get(axis).asDouble());
                assertEquals(greatest, (float) accessor.get("max").get(axis).asDouble());
            }
        }
    }

    /** Section 3.7.2.1: normals are unit vectors, as many as places; indices name vertices that exist, in whole figures. */
    @Test
    void normalsAreUnitVectorsAndIndicesNameVertices() {
        for (JsonNode primitive : primitives()) {
            float[] places = vectors(primitive.at("/attributes/POSITION").asInt());
            int corners = primitive.get("mode").asInt() == 4 ? 3 : 2;
            int[] indices = indices(primitive.get("indices").asInt());
            assertEquals(0, indices.length % corners);
            for (int index : indices) {
                assertTrue(index >= 0 && 3 * index < places.length);
            }
            assertEquals(corners == 3, primitive.at("/attributes").has("NORMAL"));
            if (corners == 3) {
                float[] normals = vectors(primitive.at("/attributes/NORMAL").asInt());
                assertEquals(places.length, normals.length);
                for (int i = 0; i < normals.length; i += 3) {
                    double length = Math.sqrt(normals[i] * normals[i]
                            + normals[i + 1] * normals[i + 1]
                            + (double) normals[i + 2] * normals[i + 2]);
                    // three floats rounded to 24 bits each
                    assertEquals(1, length, 1e-6);
                }
            }
        }
    }

    /** Section 3.5.2: every node has one parent or is a root; scenes list roots only. */
    @Test
    void nodesAreTreesAndScenesListTheirRoots() {
        int[] parents = new int[json.get("nodes").size()];
        for (JsonNode node : json.get("nodes")) {
            for (JsonNode child : node.path("children")) {
                parents[child.asInt()]++;
            }
            assertFalse(node.has("children") && node.get("children").isEmpty());
            assertFalse(node.get("name").asText().isEmpty());
            assertTrue(
                    node.at("/extras/kind").isTextual() && node.at("/extras/id").isTextual());
        }
        List<Integer> roots = new ArrayList<>();
        for (JsonNode scene : json.get("scenes")) {
            scene.get("nodes").forEach(root -> roots.add(root.asInt()));
        }
        for (int node = 0; node < parents.length; node++) {
            assertEquals(roots.contains(node) ? 0 : 1, parents[node], "node = " + node);
        }
        assertEquals("2.0", json.at("/asset/version").asText());
        assertEquals(0, json.get("scene").asInt());
    }

    @Test
    void theSameLayoutGivesTheSameBytes() {
        assertArrayEquals(file, EnclosureGlb.bytes(FullYard.habitat()));
    }

    private static List<JsonNode> primitives() {
        List<JsonNode> all = new ArrayList<>();
        for (JsonNode mesh : json.get("meshes")) {
            mesh.get("primitives").forEach(all::add);
        }
        assertTrue(all.size() > 30, "primitives = " + all.size());
        return all;
    }

    private static float[] vectors(int accessor) {
        float[] found =
                new float[3 * json.get("accessors").get(accessor).get("count").asInt()];
        for (int i = 0; i < found.length; i++) {
            found[i] = numbers.getFloat(start(accessor) + 4 * i);
        }
        return found;
    }

    private static int[] indices(int accessor) {
        int[] found = new int[json.get("accessors").get(accessor).get("count").asInt()];
        for (int i = 0; i < found.length; i++) {
            found[i] = numbers.getInt(start(accessor) + 4 * i);
        }
        return found;
    }

    private static int start(int accessor) {
        JsonNode description = json.get("accessors").get(accessor);
        JsonNode view =
                json.get("bufferViews").get(description.get("bufferView").asInt());
        return view.get("byteOffset").asInt() + description.get("byteOffset").asInt();
    }
}
