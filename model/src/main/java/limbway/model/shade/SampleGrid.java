package limbway.model.shade;

import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Platform;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Point;

/** Points spread evenly over a platform, along its longest side. */
final class SampleGrid {

    /** Samples stand just above the boards [m]. */
    private static final double ABOVE_M = 0.001;

    private final double[] xs;
    private final double[] ys;
    private final double z;
    private final double[] middle;
    private final double[] half;

    /**
     * A grid.
     *
     * @param platform where
     * @param perSide points along each side of the box around the platform; those outside its edge are left out
     */
    SampleGrid(Platform platform, int perSide) {
        List<Corner> corners = platform.outline().corners();
        double[] along = longestSide(corners);
        double leastU = Double.POSITIVE_INFINITY;
        double mostU = Double.NEGATIVE_INFINITY;
        double leastV = Double.POSITIVE_INFINITY;
        double mostV = Double.NEGATIVE_INFINITY;
        for (Corner c : corners) {
            double u = c.xM() * along[0] + c.yM() * along[1];
            double v = c.yM() * along[0] - c.xM() * along[1];
            leastU = Math.min(leastU, u);
            mostU = Math.max(mostU, u);
            leastV = Math.min(leastV, v);
            mostV = Math.max(mostV, v);
        }
        List<double[]> inside = new ArrayList<>();
        for (int i = 0; i < perSide; i++) {
            for (int j = 0; j < perSide; j++) {
                double u = leastU + (mostU - leastU) * (i + 0.5) / perSide;
                double v = leastV + (mostV - leastV) * (j + 0.5) / perSide;
                double x = u * along[0] - v * along[1];
                double y = u * along[1] + v * along[0];
                if (platform.outline().covers(x, y)) {
                    inside.add(new double[] {x, y});
                }
            }
        }
        if (inside.isEmpty()) {
            Point centre = platform.centre();
            inside.add(new double[] {centre.xM(), centre.yM()});
        }
        xs = inside.stream().mapToDouble(p -> p[0]).toArray();
        ys = inside.stream().mapToDouble(p -> p[1]).toArray();
        z = platform.zM() + ABOVE_M;
        double[] box =
                Boxes.around(inside.stream().map(p -> new Point(p[0], p[1], z)).toList(), 0);
        middle = new double[3];
        half = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            middle[axis] = (box[axis] + box[axis + 3]) / 2;
            half[axis] = (box[axis + 3] - box[axis]) / 2;
        }
    }

    private static double[] longestSide(List<Corner> corners) {
        double longest = 0;
        double[] direction = {1, 0};
        for (int i = 0; i < corners.size(); i++) {
            Corner to = corners.get((i + 1) % corners.size());
            double dx = to.xM() - corners.get(i).xM();
            double dy = to.yM() - corners.get(i).yM();
            double length = Math.hypot(dx, dy);
            // equal sides keep the first: rounding must not turn the grid
            if (length > longest * (1 + 1e-9)) {
                longest = length;
                direction = new double[] {dx / length, dy / length};
            }
        }
        return direction;
    }

    int size() {
        return xs.length;
    }

    double x(int i) {
        return xs[i];
    }

    double y(int i) {
        return ys[i];
    }

    double z() {
        return z;
    }

    double[] middle() {
        return middle;
    }

    double[] half() {
        return half;
    }
}
