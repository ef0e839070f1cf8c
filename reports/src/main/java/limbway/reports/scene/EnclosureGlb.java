package limbway.reports.scene;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import limbway.model.body.Body;
import limbway.model.enclosure.Enclosure;
import limbway.model.graph.MoveCosts;
import limbway.sim.habitat.Habitat;

/**
 * A compiled layout as open glTF 2.0 binary, for 3D viewers: metres, x east, y up, z south.
 *
 * <p>The first scene, which viewers show, holds everything that stands there and every move that some body of the group
 * can make. Each further scene holds the same things and the moves of one body.
 *
 * @source Khronos glTF 2.0 specification, the same as ISO/IEC 12113:2022
 */
public final class EnclosureGlb {

    private EnclosureGlb() {}

    /**
     * The file.
     *
     * @param habitat a layout, compiled
     * @return the bytes of a {@code .glb} file, the same for the same layout
     */
    public static byte[] bytes(Habitat habitat) {
        SceneNode things = things(habitat.layout().enclosure(), Roundness.FINE);
        MoveLines moves = new MoveLines(habitat.graph());
        Map<String, List<SceneNode>> scenes = new LinkedHashMap<>();
        scenes.put(habitat.layout().name(), shown(things, moves.group("moves", move -> habitat.bodies().stream()
                .anyMatch(body -> canMake(habitat, body, move)))));
        for (Body body : habitat.bodies()) {
            String name = "moves of " + body.name();
            scenes.put(name, shown(things, moves.group(name, move -> canMake(habitat, body, move))));
        }
        return new GlbWriter(scenes).bytes();
    }

    /** Everything that stands there, in groups. */
    static SceneNode things(Enclosure enclosure, Roundness round) {
        List<SceneNode> groups = new ArrayList<>(Structures.groups(enclosure, round));
        groups.addAll(Stops.groups(enclosure.bounds()));
        groups.addAll(Shades.groups(enclosure.shading(), round));
        groups.removeIf(group -> group.children().isEmpty());
        return SceneNode.group("enclosure", groups);
    }

    private static List<SceneNode> shown(SceneNode things, SceneNode moves) {
        return Stream.of(things, moves)
                .filter(node -> !node.children().isEmpty())
                .toList();
    }

    private static boolean canMake(Habitat habitat, Body body, int move) {
        return habitat.routes(body).costs().milliJ(move) != MoveCosts.IMPOSSIBLE;
    }
}
