package limbway.model.shade;

import java.util.Arrays;
import java.util.List;

import limbway.model.geometry.Point;

/** A tree of boxes around casters, in flat arrays, in which those along a ray are found. */
final class Boxes {

    private static final int LEAF = 4;
    private static final int DEEPEST = 128;
    private static final double[] NO_SIZE = new double[3];

    private final double[] single;
    private final double[] box;
    private final int[] first;
    private final int[] count;
    private final int[] order;
    private int nodes;

    /** A tree over boxes of six numbers each: least x, y, z, then greatest x, y, z. */
    Boxes(List<double[]> boxes) {
        int n = boxes.size();
        order = new int[n];
        Arrays.setAll(order, i -> i);
        single = new double[n * 6];
        int most = Math.max(1, 2 * n);
        box = new double[most * 6];
        first = new int[most];
        count = new int[most];
        if (n > 0) {
            nodes = 1;
            build(0, 0, n, boxes);
            for (int i = 0; i < n; i++) {
                System.arraycopy(boxes.get(order[i]), 0, single, i * 6, 6);
            }
        }
    }

    static double[] around(List<Point> points, double marginM) {
        double[] box = none();
        for (Point p : points) {
            double[] one = {p.xM(), p.yM(), p.zM(), p.xM(), p.yM(), p.zM()};
            widen(box, 0, one);
        }
        for (int i = 0; i < 6; i++) {
            box[i] += i < 3 ? -marginM : marginM;
        }
        return box;
    }

    private static double[] none() {
        double far = Double.POSITIVE_INFINITY;
        return new double[] {far, far, far, -far, -far, -far};
    }

    private static void widen(double[] target, int at, double[] other) {
        for (int i = 0; i < 3; i++) {
            target[at + i] = Math.min(target[at + i], other[i]);
            target[at + i + 3] = Math.max(target[at + i + 3], other[i + 3]);
        }
    }

    private void build(int node, int from, int to, List<double[]> boxes) {
        double[] whole = none();
        double[] middles = none();
        for (int i = from; i < to; i++) {
            double[] one = boxes.get(order[i]);
            widen(whole, 0, one);
            widen(middles, 0, middle(one));
        }
        System.arraycopy(whole, 0, box, node * 6, 6);
        if (to - from <= LEAF) {
            first[node] = from;
            count[node] = to - from;
            return;
        }
        sort(from, to, longest(middles), boxes);
        int split = cheapestSplit(from, to, boxes);
        int left = nodes;
        nodes += 2;
        first[node] = left;
        build(left, from, split, boxes);
        build(left + 1, split, to, boxes);
    }

    private void sort(int from, int to, int axis, List<double[]> boxes) {
        int[] sorted = Arrays.stream(order, from, to)
                .boxed()
                .sorted((a, b) -> {
                    double ma = boxes.get(a)[axis] + boxes.get(a)[axis + 3];
                    double mb = boxes.get(b)[axis] + boxes.get(b)[axis + 3];
                    return ma == mb ? Integer.compare(a, b) : Double.compare(ma, mb);
                })
                .mapToInt(Integer::intValue)
                .toArray();
        System.arraycopy(sorted, 0, order, from, sorted.length);
    }

    /** Where to part a sorted run: a box is met as often as its surface is large (the surface area heuristic). */
    private int cheapestSplit(int from, int to, List<double[]> boxes) {
        int n = to - from;
        double[] right = new double[n];
        double[] grown = none();
        for (int i = n - 1; i > 0; i--) {
            widen(grown, 0, boxes.get(order[from + i]));
            right[i] = surface(grown);
        }
        grown = none();
        int best = n / 2;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < n; i++) {
            widen(grown, 0, boxes.get(order[from + i - 1]));
            double cost = surface(grown) * i + right[i] * (n - i);
            // no sliver thinner than an eighth: the tree must not get deep
            if (cost < least && i >= n / 8 && n - i >= n / 8) {
                least = cost;
                best = i;
            }
        }
        return from + best;
    }

    private static double surface(double[] box) {
        double x = box[3] - box[0];
        double y = box[4] - box[1];
        double z = box[5] - box[2];
        return x * y + y * z + z * x;
    }

    private static double[] middle(double[] box) {
        double[] middle = new double[6];
        for (int axis = 0; axis < 6; axis++) {
            middle[axis] = (box[axis % 3] + box[axis % 3 + 3]) / 2;
        }
        return middle;
    }

    private static int longest(double[] box) {
        int best = 0;
        for (int axis = 1; axis < 3; axis++) {
            if (box[axis + 3] - box[axis] > box[best + 3] - box[best]) {
                best = axis;
            }
        }
        return best;
    }

    /**
     * Finds what a bundle of parallel rays may meet: a box of starting points and one direction.
     *
     * @param middle middle of the starting points: x, y, z
     * @param half half the size of their box
     * @param dx direction of unit length
     * @param found filled with numbers of boxes, in an order that depends on the tree alone
     * @return how many were found
     */
    int along(double[] middle, double[] half, double dx, double dy, double dz, int[] found) {
        if (nodes == 0) {
            return 0;
        }
        int[] stack = new int[DEEPEST];
        int depth = 1;
        int n = 0;
        double ix = 1 / dx;
        double iy = 1 / dy;
        double iz = 1 / dz;
        while (depth > 0) {
            int node = stack[--depth];
            if (count[node] > 0) {
                for (int i = first[node]; i < first[node] + count[node]; i++) {
                    if (meets(single, i * 6, middle, half, ix, iy, iz)) {
                        found[n++] = order[i];
                    }
                }
            } else {
                int child = first[node];
                if (meets(box, child * 6, middle, half, ix, iy, iz)) {
                    stack[depth++] = child;
                }
                if (meets(box, child * 6 + 6, middle, half, ix, iy, iz)) {
                    stack[depth++] = child + 1;
                }
            }
        }
        return n;
    }

    /**
     * Light along one ray past all that it meets.
     *
     * @param casters what the boxes stand for
     * @param season state of the leaves
     */
    double through(Caster[] casters, double x, double y, double z, double dx, double dy, double dz, int season) {
        int[] stack = new int[DEEPEST];
        int depth = nodes == 0 ? 0 : 1;
        double ix = 1 / dx;
        double iy = 1 / dy;
        double iz = 1 / dz;
        double[] from = {x, y, z};
        double light = 1;
        while (depth > 0) {
            int node = stack[--depth];
            if (count[node] == 0) {
                int child = first[node];
                if (meets(box, child * 6, from, NO_SIZE, ix, iy, iz)) {
                    stack[depth++] = child;
                }
                if (meets(box, child * 6 + 6, from, NO_SIZE, ix, iy, iz)) {
                    stack[depth++] = child + 1;
                }
                continue;
            }
            for (int i = first[node]; i < first[node] + count[node]; i++) {
                if (meets(single, i * 6, from, NO_SIZE, ix, iy, iz)) {
                    light *= casters[order[i]].through(x, y, z, dx, dy, dz, season);
                }
            }
            if (light == 0) {
                return 0;
            }
        }
        return light;
    }

    private static boolean meets(
            double[] box, int at, double[] middle, double[] half, double ix, double iy, double iz) {
        double near = 0;
        double far = Double.POSITIVE_INFINITY;
        for (int axis = 2; axis >= 0; axis--) {
            double inverse = axis == 0 ? ix : axis == 1 ? iy : iz;
            double low = box[at + axis] - half[axis] - middle[axis];
            double high = box[at + axis + 3] + half[axis] - middle[axis];
            if (Double.isInfinite(inverse)) {
                if (low > 0 || high < 0) {
                    return false;
                }
                continue;
            }
            near = Math.max(near, (inverse < 0 ? high : low) * inverse);
            far = Math.min(far, (inverse < 0 ? low : high) * inverse);
            if (near > far) {
                return false;
            }
        }
        return true;
    }
}
