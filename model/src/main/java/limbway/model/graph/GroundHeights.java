package limbway.model.graph;

import java.util.ArrayList;
import java.util.List;

import limbway.model.geometry.Point;
import limbway.model.geometry.Terrain;
import limbway.model.geometry.Triangle;

/**
 * Heights of the ground, looked up by place: the same as {@link Terrain#heightM}, in a time that does not grow with the
 * number of triangles.
 *
 * <p>A place within a micrometre of the sheet counts as on it, so that places computed on an edge are not lost.
 */
final class GroundHeights {

    private static final double SLACK_M = 1e-6;
    private static final int NONE = -1;

    private final Terrain terrain;
    private double westM = Double.MAX_VALUE;
    private double southM = Double.MAX_VALUE;
    private double cellM;
    private int columns;
    private final List<List<Integer>> cells = new ArrayList<>();

    GroundHeights(Terrain terrain) {
        this.terrain = terrain;
        if (!terrain.isLevel()) {
            buildGrid();
        }
    }

    private void buildGrid() {
        double eastM = -Double.MAX_VALUE;
        double northM = -Double.MAX_VALUE;
        for (Triangle triangle : terrain.triangles()) {
            westM = Math.min(westM, least(triangle, true));
            southM = Math.min(southM, least(triangle, false));
            eastM = Math.max(eastM, most(triangle, true));
            northM = Math.max(northM, most(triangle, false));
        }
        cellM = Math.sqrt(
                2 * (eastM - westM) * (northM - southM) / terrain.triangles().size());
        columns = 1 + (int) ((eastM - westM) / cellM);
        int rows = 1 + (int) ((northM - southM) / cellM);
        for (int i = 0; i < columns * rows; i++) {
            cells.add(new ArrayList<>(4));
        }
        for (int t = 0; t < terrain.triangles().size(); t++) {
            Triangle triangle = terrain.triangles().get(t);
            int lastRow = index(most(triangle, false) + SLACK_M - southM, rows);
            int lastColumn = index(most(triangle, true) + SLACK_M - westM, columns);
            for (int row = index(least(triangle, false) - SLACK_M - southM, rows); row <= lastRow; row++) {
                for (int c = index(least(triangle, true) - SLACK_M - westM, columns); c <= lastColumn; c++) {
                    cells.get(row * columns + c).add(t);
                }
            }
        }
    }

    boolean isLevel() {
        return terrain.isLevel();
    }

    /** The height of the ground at a place; beyond the sheet that of its nearest corner. */
    double at(double xM, double yM) {
        if (isLevel()) {
            return 0;
        }
        int triangle = triangleAt(xM, yM);
        return triangle == NONE
                ? terrain.heightM(xM, yM)
                : terrain.triangles().get(triangle).heightM(xM, yM);
    }

    /** The place on the ground straight above or below another. */
    Point onGround(Point p) {
        return p.atHeight(at(p.xM(), p.yM()));
    }

    /** Whether there is ground at a place; level ground has no end. */
    boolean covers(double xM, double yM) {
        return isLevel() || triangleAt(xM, yM) != NONE;
    }

    /** The triangle in which a place lies deepest. */
    private int triangleAt(double xM, double yM) {
        int rows = cells.size() / columns;
        int cell = index(yM - southM, rows) * columns + index(xM - westM, columns);
        int found = NONE;
        double deepestM = -SLACK_M;
        for (int t : cells.get(cell)) {
            double depthM = depthM(terrain.triangles().get(t), xM, yM);
            if (depthM > deepestM) {
                deepestM = depthM;
                found = t;
            }
        }
        return found;
    }

    private int index(double fromEdgeM, int count) {
        return (int) Math.max(0, Math.min(count - 1, Math.floor(fromEdgeM / cellM)));
    }

    /** Distance from the nearest side, negative outside. */
    private static double depthM(Triangle triangle, double xM, double yM) {
        Point[] corners = {triangle.a(), triangle.b(), triangle.c()};
        double turn = Math.signum(sideM(corners[0], corners[1], corners[2].xM(), corners[2].yM()));
        double depthM = Double.MAX_VALUE;
        for (int i = 0; i < corners.length; i++) {
            depthM = Math.min(depthM, turn * sideM(corners[i], corners[(i + 1) % corners.length], xM, yM));
        }
        return depthM;
    }

    private static double sideM(Point from, Point to, double xM, double yM) {
        double dx = to.xM() - from.xM();
        double dy = to.yM() - from.yM();
        return (dx * (yM - from.yM()) - (xM - from.xM()) * dy) / Math.sqrt(dx * dx + dy * dy);
    }

    private static double least(Triangle t, boolean east) {
        return east
                ? Math.min(t.a().xM(), Math.min(t.b().xM(), t.c().xM()))
                : Math.min(t.a().yM(), Math.min(t.b().yM(), t.c().yM()));
    }

    private static double most(Triangle t, boolean east) {
        return east
                ? Math.max(t.a().xM(), Math.max(t.b().xM(), t.c().xM()))
                : Math.max(t.a().yM(), Math.max(t.b().yM(), t.c().yM()));
    }
}
