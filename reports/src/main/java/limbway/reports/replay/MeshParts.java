package limbway.reports.replay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.reports.scene.PaintedMesh;

/** Meshes as parts of a layout: corners that fall together after rounding are written once. */
final class MeshParts {

    /** A unit vector is written in so many steps. */
    private static final double NORMAL_STEPS = 127;

    private final PlaceGrid grid;

    MeshParts(PlaceGrid grid) {
        this.grid = grid;
    }

    List<Map<String, Object>> of(List<PaintedMesh> meshes) {
        return meshes.stream().map(this::part).toList();
    }

    private Map<String, Object> part(PaintedMesh mesh) {
        float[] places = mesh.places();
        float[] normals = mesh.normals();
        int width = mesh.isLines() ? 3 : 6;
        Map<List<Integer>, Integer> corners = new LinkedHashMap<>();
        int[] newNumber = new int[places.length / 3];
        for (int vertex = 0; vertex < newNumber.length; vertex++) {
            Integer[] corner = new Integer[width];
            for (int axis = 0; axis < 3; axis++) {
                corner[axis] = grid.steps(axis, places[3 * vertex + axis]);
                if (width > 3) {
                    corner[3 + axis] = (int) Math.rint(normals[3 * vertex + axis] * NORMAL_STEPS);
                }
            }
            newNumber[vertex] = corners.computeIfAbsent(Arrays.asList(corner), k -> corners.size());
        }
        Map<String, Object> part = new LinkedHashMap<>();
        part.put("finish", mesh.finish());
        part.put("rgb", mesh.rgb());
        part.put("alpha", mesh.alpha());
        part.put("drawing", mesh.isLines() ? "lines" : "triangles");
        part.put("casts", mesh.castsShadow());
        part.put("places", Rows.i16(columns(corners, 0)));
        if (!mesh.isLines()) {
            part.put("normals", Rows.i8(columns(corners, 3)));
        }
        part.put(
                "indices",
                Rows.unsigned(Arrays.stream(mesh.indices())
                        .mapToLong(index -> newNumber[index])
                        .toArray()));
        part.put("things", things(mesh));
        return part;
    }

    private static int[] columns(Map<List<Integer>, Integer> corners, int first) {
        return corners.keySet().stream()
                .flatMap(corner -> corner.subList(first, first + 3).stream())
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private static List<Map<String, Object>> things(PaintedMesh mesh) {
        List<Map<String, Object>> things = new ArrayList<>();
        for (PaintedMesh.Thing thing : mesh.things()) {
            Map<String, Object> object = new LinkedHashMap<>();
            object.put("kind", thing.kind());
            object.put("id", thing.id());
            object.put("first", thing.first());
            object.put("count", thing.count());
            things.add(object);
        }
        return things;
    }
}
