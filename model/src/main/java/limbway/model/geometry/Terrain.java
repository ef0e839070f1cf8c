package limbway.model.geometry;

import java.util.List;

/**
 * Heights of the ground: a sheet of triangles that meet edge to edge, or level at height 0.
 *
 * @param triangles the sheet; empty for level ground
 */
public record Terrain(List<Triangle> triangles) {

    /** Level ground at height 0. */
    public static final Terrain LEVEL = new Terrain(List.of());

    /** Keeps a copy of the list. */
    public Terrain {
        triangles = List.copyOf(triangles);
    }

    /**
     * Whether the ground is level at height 0.
     *
     * @return true if no heights were given
     */
    public boolean isLevel() {
        return triangles.isEmpty();
    }

    /**
     * The height of the ground at a place; beyond the sheet that of its nearest corner.
     *
     * @param xM metres east
     * @param yM metres north
     * @return height [m]
     */
    public double heightM(double xM, double yM) {
        Point place = new Point(xM, yM, 0);
        Point nearest = place;
        double nearestM = Double.MAX_VALUE;
        for (Triangle triangle : triangles) {
            if (triangle.covers(xM, yM)) {
                return triangle.heightM(xM, yM);
            }
            for (Point corner : List.of(triangle.a(), triangle.b(), triangle.c())) {
                if (corner.planDistanceM(place) < nearestM) {
                    nearestM = corner.planDistanceM(place);
                    nearest = corner;
                }
            }
        }
        return nearest.zM();
    }

    /**
     * How high a place is above the ground straight below it.
     *
     * @param place any place
     * @return height [m], negative below the ground
     */
    public double aboveM(Point place) {
        return place.zM() - heightM(place.xM(), place.yM());
    }
}
