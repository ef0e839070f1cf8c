package limbway.model.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A flat polygon in space that does not cross itself.
 *
 * @param corners corners in the order in which one walks round the edge, three or more, in one plane
 */
public record Facet(List<Point> corners) {

    /** Corners may lie this far from the plane of the others [m]: a centimetre, as built. */
    public static final double FLATNESS_M = 0.01;

    /**
     * Checks that the corners span a plane and lie in it.
     *
     * @throws IllegalArgumentException naming what is wrong
     */
    public Facet {
        corners = List.copyOf(corners);
        if (corners.size() < 3) {
            throw new IllegalArgumentException("facet: corners = " + corners.size() + ", allowed 3 or more");
        }
        if (!(doubleArea(corners).lengthM() > 1e-9)) {
            throw new IllegalArgumentException("facet: corners = " + corners + ", allowed not in one line");
        }
        double offM = farthestFromPlaneM(corners);
        if (offM > FLATNESS_M) {
            throw new IllegalArgumentException(
                    "facet: a corner lies " + offM + " m from the plane of the others, allowed up to " + FLATNESS_M);
        }
    }

    /**
     * How far the corners lie from their mean plane.
     *
     * @param corners three or more corners that span an area
     * @return greatest distance [m]
     */
    public static double farthestFromPlaneM(List<Point> corners) {
        Point normal = unit(doubleArea(corners));
        double mean = corners.stream().mapToDouble(normal::dot).average().orElse(0);
        return corners.stream()
                .mapToDouble(corner -> Math.abs(normal.dot(corner) - mean))
                .max()
                .orElse(0);
    }

    /**
     * The direction at right angles to the facet from which its corners run anticlockwise.
     *
     * @return a vector of length 1
     */
    public Point normal() {
        return unit(doubleArea(corners));
    }

    /**
     * Area of the facet.
     *
     * @return square metres
     */
    public double areaM2() {
        return doubleArea(corners).lengthM() / 2;
    }

    /**
     * The sides of the facet, in order.
     *
     * @return one line for each corner
     */
    public List<Segment> edges() {
        List<Segment> edges = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            edges.add(new Segment(corners.get(i), corners.get((i + 1) % corners.size())));
        }
        return edges;
    }

    /** The sum of cross products of the edges, twice the area long. */
    private static Point doubleArea(List<Point> corners) {
        Point sum = new Point(0, 0, 0);
        Point origin = corners.get(0);
        for (int i = 1; i + 1 < corners.size(); i++) {
            sum = sum.plus(
                    cross(corners.get(i).minus(origin), corners.get(i + 1).minus(origin)));
        }
        return sum;
    }

    private static Point cross(Point a, Point b) {
        return new Point(
                a.yM() * b.zM() - a.zM() * b.yM(),
                a.zM() * b.xM() - a.xM() * b.zM(),
                a.xM() * b.yM() - a.yM() * b.xM());
    }

    private static Point unit(Point vector) {
        return vector.times(1 / vector.lengthM());
    }
}
