package limbway.reports.replay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import limbway.model.body.LocomotorMode;
import limbway.reports.data.Json;
import limbway.reports.scene.PaintedMeshes;
import limbway.reports.words.PartText;
import limbway.reports.words.ReplayText;
import limbway.sim.journal.Motive;

/** The data of a replay, as docs/replay-data.md tells. */
public final class ReplayData {

    /** Changes with each change of the data that a reader must know of. */
    private static final int FORMAT = 1;

    private ReplayData() {}

    /**
     * The data of one page.
     *
     * @param title what the page is about
     * @param layouts what is shown, in order; at least one
     * @return JSON that can stand within a script element of a page, the same for the same run
     */
    public static String json(String title, List<ReplayLayout> layouts) {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("format", FORMAT);
        root.put("title", title);
        root.put("texts", ReplayText.byKey());
        root.put("modes", modes());
        root.put("motives", Stream.of(Motive.values()).map(Motive::word).toList());
        root.put("layouts", layouts.stream().map(ReplayLayout::json).toList());
        return Json.embedded(root);
    }

    /** By number of the mode. On the ground a line has a broad edge whatever the mode. */
    private static List<Map<String, Object>> modes() {
        List<Map<String, Object>> modes = new ArrayList<>();
        for (LocomotorMode mode : LocomotorMode.values()) {
            Map<String, Object> entry = new LinkedHashMap<>();
            entry.put("word", mode.word());
            entry.put("part", mode.part());
            entry.put("doing", PartText.doing(mode));
            entry.put("rgb", PaintedMeshes.rgb(mode));
            entry.put("dash", dash(mode));
            modes.add(entry);
        }
        return modes;
    }

    /** Lengths of dash and gap, so that modes differ without colour too: flung moves are dotted, hanging ones dashed. */
    private static List<Integer> dash(LocomotorMode mode) {
        return switch (mode) {
            case QUADRUPEDAL_WALK, BIPEDAL_WALK, VERTICAL_CLIMB, VERTICAL_DESCENT -> List.of();
            case CLAMBER -> List.of(8, 3);
            case BRIDGE -> List.of(4, 3);
            case BRACHIATE -> List.of(8, 3, 2, 3);
            case SWAY, LEAP, DROP -> List.of(1, 3);
        };
    }
}
