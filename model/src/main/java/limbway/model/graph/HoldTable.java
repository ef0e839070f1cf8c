package limbway.model.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import limbway.model.geometry.Point;

/**
 * Holds in the order they are first met; places closer than a micrometre are one hold.
 *
 * <p>Coordinates lie in flat arrays and are found again by a hash of the centimetre cell they lie in; a place within a
 * micrometre of a cell's side is looked for in the neighbouring cells too.
 */
final class HoldTable {

    /** A hold no higher than this above the ground stands on it. */
    static final double GROUND_LEVEL_M = 0.01;

    /** Coordinates of one place found in two ways differ by less. */
    private static final double ROUNDING_M = 1e-11;

    private static final double CELL_M = 0.01;
    private static final int NONE = -1;

    private final GroundHeights ground;
    private final List<String> names = new ArrayList<>();
    private final Map<String, Integer> nameNumbers = new LinkedHashMap<>();
    private double[] xM = new double[1024];
    private double[] yM = new double[1024];
    private double[] zM = new double[1024];
    /** Height above sloping ground; empty where the ground is level at 0. */
    private double[] heightM;

    private int[] name = new int[1024];
    private int[] nextInBucket = new int[1024];
    private int[] firstInBucket = new int[2048];
    private int size;
    /** Places that became a hold which lies elsewhere by more than rounding. */
    private final Set<Point> moved = new LinkedHashSet<>();

    HoldTable(GroundHeights ground) {
        this.ground = ground;
        this.heightM = ground.isLevel() ? new double[0] : new double[xM.length];
        Arrays.fill(firstInBucket, NONE);
    }

    int at(Point p, String support) {
        int known = find(p);
        if (known != NONE) {
            if (!isWithin(known, p, ROUNDING_M)) {
                moved.add(p);
            }
            return known;
        }
        if (size == xM.length) {
            grow();
        }
        xM[size] = p.xM();
        yM[size] = p.yM();
        zM[size] = p.zM();
        if (!ground.isLevel()) {
            heightM[size] = heightM(p);
        }
        name[size] = nameNumbers.computeIfAbsent(support, s -> {
            names.add(s);
            return names.size() - 1;
        });
        link(size);
        return size++;
    }

    int size() {
        return size;
    }

    /** Places that are one hold with another that was met before and lies elsewhere by more than rounding. */
    Set<Point> moved() {
        return Set.copyOf(moved);
    }

    Point place(int hold) {
        return new Point(xM[hold], yM[hold], zM[hold]);
    }

    double zM(int hold) {
        return zM[hold];
    }

    String name(int hold) {
        return names.get(name[hold]);
    }

    /** Height of a hold above the ground, negative below it. */
    double heightM(int hold) {
        return ground.isLevel() ? zM[hold] : heightM[hold];
    }

    /** Height of a place above the ground, negative below it. */
    double heightM(Point p) {
        return p.zM() - ground.at(p.xM(), p.yM());
    }

    boolean onGround(int hold) {
        return heightM(hold) <= GROUND_LEVEL_M;
    }

    double distanceM(int a, int b) {
        double dx = xM[b] - xM[a];
        double dy = yM[b] - yM[a];
        double dz = zM[b] - zM[a];
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    private int find(Point p) {
        double slack = Pieces.SAME_PLACE_M;
        for (long x = cell(p.xM() - slack); x <= cell(p.xM() + slack); x++) {
            for (long y = cell(p.yM() - slack); y <= cell(p.yM() + slack); y++) {
                for (long z = cell(p.zM() - slack); z <= cell(p.zM() + slack); z++) {
                    for (int hold = firstInBucket[bucket(x, y, z)]; hold != NONE; hold = nextInBucket[hold]) {
                        if (isWithin(hold, p, slack)) {
                            return hold;
                        }
                    }
                }
            }
        }
        return NONE;
    }

    private boolean isWithin(int hold, Point p, double slackM) {
        double dx = xM[hold] - p.xM();
        double dy = yM[hold] - p.yM();
        double dz = zM[hold] - p.zM();
        return dx * dx + dy * dy + dz * dz <= slackM * slackM;
    }

    private void link(int hold) {
        int bucket = bucket(cell(xM[hold]), cell(yM[hold]), cell(zM[hold]));
        nextInBucket[hold] = firstInBucket[bucket];
        firstInBucket[bucket] = hold;
    }

    private void grow() {
        int length = 2 * size;
        xM = Arrays.copyOf(xM, length);
        yM = Arrays.copyOf(yM, length);
        zM = Arrays.copyOf(zM, length);
        heightM = ground.isLevel() ? heightM : Arrays.copyOf(heightM, length);
        name = Arrays.copyOf(name, length);
        nextInBucket = Arrays.copyOf(nextInBucket, length);
        firstInBucket = new int[2 * length];
        Arrays.fill(firstInBucket, NONE);
        for (int hold = 0; hold < size; hold++) {
            link(hold);
        }
    }

    private int bucket(long x, long y, long z) {
        long h = x * 0x9e3779b97f4a7c15L ^ y * 0xc2b2ae3d27d4eb4fL ^ z * 0x165667b19e3779f9L;
        h ^= h >>> 32;
        // the length is a power of two
        return (int) (h ^ h >>> 15) & (firstInBucket.length - 1);
    }

    private static long cell(double m) {
        return (long) Math.floor(m / CELL_M);
    }
}
