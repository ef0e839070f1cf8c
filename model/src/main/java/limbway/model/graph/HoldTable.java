package limbway.model.graph;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import limbway.model.geometry.Point;

/** Holds in the order they are first met; places closer than a micrometre are one hold. */
final class HoldTable {

    /** A hold lower than this stands on the ground. */
    static final double GROUND_LEVEL_M = 0.01;

    private static final double CELL_M = 0.01;

    private record Cell(long x, long y, long z) {}

    private final List<Point> places = new ArrayList<>();
    private final List<String> names = new ArrayList<>();
    private final Map<Cell, List<Integer>> cells = new HashMap<>();

    int at(Point p, String name) {
        int known = find(p);
        if (known >= 0) {
            return known;
        }
        int id = places.size();
        places.add(p);
        names.add(name);
        cells.computeIfAbsent(cell(p.xM(), p.yM(), p.zM()), k -> new ArrayList<>(1))
                .add(id);
        return id;
    }

    int size() {
        return places.size();
    }

    Point place(int hold) {
        return places.get(hold);
    }

    String name(int hold) {
        return names.get(hold);
    }

    boolean onGround(int hold) {
        return places.get(hold).zM() <= GROUND_LEVEL_M;
    }

    private int find(Point p) {
        double tolerance = Pieces.SAME_PLACE_M;
        Cell low = cell(p.xM() - tolerance, p.yM() - tolerance, p.zM() - tolerance);
        Cell high = cell(p.xM() + tolerance, p.yM() + tolerance, p.zM() + tolerance);
        for (long x = low.x; x <= high.x; x++) {
            for (long y = low.y; y <= high.y; y++) {
                for (long z = low.z; z <= high.z; z++) {
                    for (int id : cells.getOrDefault(new Cell(x, y, z), List.of())) {
                        if (places.get(id).distanceM(p) <= tolerance) {
                            return id;
                        }
                    }
                }
            }
        }
        return -1;
    }

    private static Cell cell(double x, double y, double z) {
        return new Cell((long) Math.floor(x / CELL_M), (long) Math.floor(y / CELL_M), (long) Math.floor(z / CELL_M));
    }
}
