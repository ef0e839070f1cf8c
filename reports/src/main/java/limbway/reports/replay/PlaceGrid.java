package limbway.reports.replay;

import java.util.ArrayList;
import java.util.List;

import limbway.model.geometry.Point;
import limbway.reports.scene.PaintedMesh;

/**
 * The grid to which places in rows are rounded, in the axes of glTF, so that each coordinate takes two bytes.
 *
 * <p>Its step is 2 mm as long as the whole layout fits into 65 534 steps, and then the next of 5, 10, 20, 50 … mm.
 */
final class PlaceGrid {

    /** Finest step; no bar is thinner than some of these. */
    private static final double FINEST_MM = 2;

    private static final double MOST_STEPS = 65_534;

    private final double[] low;
    private final double[] high;
    private final double[] origin = new double[3];
    private final double stepM;

    private PlaceGrid(double[] low, double[] high) {
        this.low = low;
        this.high = high;
        double widest = 0;
        for (int axis = 0; axis < 3; axis++) {
            origin[axis] = Math.rint((low[axis] + high[axis]) / 2 * 1000) / 1000;
            widest = Math.max(widest, high[axis] - low[axis]);
        }
        // one step more on either side, for the rounding of the origin
        stepM = step(widest) / 1000;
    }

    /** A grid that holds all meshes and points. */
    static PlaceGrid around(List<PaintedMesh> meshes, List<Point> points) {
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (PaintedMesh mesh : meshes) {
            float[] places = mesh.places();
            for (int i = 0; i < places.length; i++) {
                low[i % 3] = Math.min(low[i % 3], places[i]);
                high[i % 3] = Math.max(high[i % 3], places[i]);
            }
        }
        for (Point point : points) {
            List<Double> turned = turned(point);
            for (int axis = 0; axis < 3; axis++) {
                low[axis] = Math.min(low[axis], turned.get(axis));
                high[axis] = Math.max(high[axis], turned.get(axis));
            }
        }
        return new PlaceGrid(low, high);
    }

    private static double step(double widestM) {
        double stepMm = FINEST_MM;
        int turn = 0;
        while (widestM * 1000 / stepMm > MOST_STEPS - 2) {
            // 2, 5, 10, 20, 50 …
            stepMm *= turn % 3 == 0 ? 2.5 : 2;
            turn++;
        }
        return stepMm;
    }

    List<Double> origin() {
        return List.of(origin[0], origin[1], origin[2]);
    }

    double stepM() {
        return stepM;
    }

    /** The box around everything: west, low, north, east, high, south. */
    List<Double> bounds() {
        return List.of(mm(low[0]), mm(low[1]), mm(low[2]), mm(high[0]), mm(high[1]), mm(high[2]));
    }

    /** Steps from the origin of a coordinate. */
    int steps(int axis, double coordinateM) {
        return (int) Math.rint((coordinateM - origin[axis]) / stepM);
    }

    /** Steps from the origin of points of the enclosure, three numbers each. */
    int[] steps(List<Point> points) {
        int[] steps = new int[3 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            List<Double> turned = turned(points.get(i));
            for (int axis = 0; axis < 3; axis++) {
                steps[3 * i + axis] = steps(axis, turned.get(axis));
            }
        }
        return steps;
    }

    /** A point of the enclosure in the axes of glTF, to the millimetre. */
    static List<Double> millimetres(Point point) {
        return turned(point).stream().map(PlaceGrid::mm).toList();
    }

    /** Points of the enclosure in one row. */
    static List<Double> millimetres(List<Point> points) {
        List<Double> row = new ArrayList<>();
        points.forEach(point -> row.addAll(millimetres(point)));
        return row;
    }

    private static List<Double> turned(Point point) {
        // 0 - y instead of -y: no negative zero
        return List.of(point.xM(), point.zM(), 0 - point.yM());
    }

    private static double mm(double metres) {
        return Math.rint(metres * 1000) / 1000 + 0.0;
    }
}
