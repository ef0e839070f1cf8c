package limbway.reports.scene;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Something with a name in a scene.
 *
 * @param name what it is called
 * @param extras what else is told of it; {@code kind} and {@code id} always
 * @param parts its shapes; empty for a group
 * @param children what belongs to it, in order
 */
record SceneNode(String name, Map<String, Object> extras, List<Part> parts, List<SceneNode> children) {

    /** A thing of the enclosure. */
    static SceneNode thing(String kind, String id, Part... parts) {
        return new SceneNode(id, extras(kind, id), List.of(parts), List.of());
    }

    /** Nodes under one name. */
    static SceneNode group(String name, List<SceneNode> children) {
        return new SceneNode(name, extras("group", name), List.of(), children);
    }

    /** The same node with one more thing told of it. */
    SceneNode telling(String what, Object value) {
        Map<String, Object> more = new LinkedHashMap<>(extras);
        more.put(what, value);
        return new SceneNode(name, more, parts, children);
    }

    private static Map<String, Object> extras(String kind, String id) {
        Map<String, Object> extras = new LinkedHashMap<>();
        extras.put("kind", kind);
        extras.put("id", id);
        return extras;
    }
}
