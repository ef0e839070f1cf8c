package limbway.model.geometry;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * A closed area of a plan, given by its corners in order, the last joined to the first.
 *
 * @param corners at least three corners; the outline must not cross itself
 */
public record Outline(List<Corner> corners) {

    /**
     * Checks the number of corners and keeps a copy.
     *
     * @throws IllegalArgumentException if there are fewer than three corners
     */
    public Outline {
        corners = List.copyOf(corners);
        if (corners.size() < 3) {
            throw new IllegalArgumentException("outline: corners = " + corners.size() + ", allowed 3 or more");
        }
    }

    /**
     * An upright rectangle.
     *
     * @param x0M west edge [m]
     * @param y0M south edge [m]
     * @param x1M east edge [m]
     * @param y1M north edge [m]
     * @return the outline, counter-clockwise
     */
    public static Outline rectangle(double x0M, double y0M, double x1M, double y1M) {
        return new Outline(
                List.of(new Corner(x0M, y0M), new Corner(x1M, y0M), new Corner(x1M, y1M), new Corner(x0M, y1M)));
    }

    /**
     * The outline as a JTS polygon.
     *
     * @return a polygon without holes
     */
    public Polygon toPolygon() {
        List<Coordinate> ring = new ArrayList<>();
        for (Corner corner : corners) {
            ring.add(new Coordinate(corner.xM(), corner.yM()));
        }
        ring.add(ring.get(0).copy());
        return new GeometryFactory().createPolygon(ring.toArray(Coordinate[]::new));
    }

    /**
     * Area within the outline.
     *
     * @return area [m²], 0 or more
     */
    public double areaM2() {
        return Math.abs(signedDoubleArea()) / 2;
    }

    /**
     * Whether a place lies within the outline or on its edge.
     *
     * @param xM metres east
     * @param yM metres north
     * @return true inside and on the edge
     */
    public boolean covers(double xM, double yM) {
        boolean inside = false;
        for (int i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
            Corner a = corners.get(i);
            Corner b = corners.get(j);
            if (onEdge(a, b, xM, yM)) {
                return true;
            }
            if (a.yM() > yM != b.yM() > yM && xM < (b.xM() - a.xM()) * (yM - a.yM()) / (b.yM() - a.yM()) + a.xM()) {
                inside = !inside;
            }
        }
        return inside;
    }

    /**
     * Whether every straight way between two places within stays within.
     *
     * @return true if no corner turns the other way than the rest
     */
    public boolean isConvex() {
        double sign = Math.signum(signedDoubleArea());
        int n = corners.size();
        for (int i = 0; i < n; i++) {
            Corner a = corners.get(i);
            Corner b = corners.get((i + 1) % n);
            Corner c = corners.get((i + 2) % n);
            double turn = (b.xM() - a.xM()) * (c.yM() - b.yM()) - (b.yM() - a.yM()) * (c.xM() - b.xM());
            if (turn * sign < 0) {
                return false;
            }
        }
        return true;
    }

    private double signedDoubleArea() {
        double sum = 0;
        int n = corners.size();
        for (int i = 0; i < n; i++) {
            Corner a = corners.get(i);
            Corner b = corners.get((i + 1) % n);
            sum += a.xM() * b.yM() - b.xM() * a.yM();
        }
        return sum;
    }

    private static boolean onEdge(Corner a, Corner b, double xM, double yM) {
        Point p = new Point(xM, yM, 0);
        return new Segment(a.atHeight(0), b.atHeight(0)).distanceM(p) <= 1e-9;
    }
}
