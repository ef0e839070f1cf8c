package limbway.scenarios.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.valid.IsValidOp;

import limbway.model.geometry.Facet;
import limbway.model.geometry.Point;
import limbway.scenarios.format.Node;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the corners of a flat panel in space. */
final class FacetReader {

    private static final PointsReader.Kind CORNERS = new PointsReader.Kind(
            "corner", PlaceReader.XYZ, 3, "[[0, 0, 0], [8, 0, 0], [8, 0, 4], [0, 0, 4]]", "[x, y, z] in metres");

    /** Three corners that span less than this lie in one line [m²]: a hand's breadth over a metre. */
    private static final double LEAST_AREA_M2 = 0.01;

    private final Problems problems;
    private final PointsReader points;
    private final OutlineReader outlines;

    FacetReader(Problems problems) {
        this.problems = problems;
        this.points = new PointsReader(problems);
        this.outlines = new OutlineReader(problems);
    }

    /** The shape of an entry that states its corners, or empty after a problem. */
    Optional<List<Point>> byCorners(Fields fields) {
        return fields.read("corners", node -> corners(node, "corners of " + fields.what()));
    }

    /** The shape of an entry that states its outline and one height, or empty after a problem. */
    Optional<List<Point>> level(Fields fields) {
        fields.require("height", "4.0");
        double heightM = fields.number(Quantity.HEIGHT);
        String what = "corners of " + fields.what();
        return fields.read("outline", node -> outlines.read(node, "outline of " + fields.what())
                .map(edge -> edge.corners().stream()
                        .map(corner -> corner.atHeight(heightM))
                        .toList())
                .filter(corners -> isFlat(node, what, corners)));
    }

    /** Corners that span a plane and lie in it, or empty after a problem. */
    private Optional<List<Point>> corners(Node node, String what) {
        return points.read(node, what, CORNERS)
                .map(rows -> OutlineReader.withoutClosingCorner(PointsReader.inSpace(rows)))
                .filter(corners -> isFlat(node, what, corners));
    }

    /** Whether corners span a plane and lie in it; otherwise a problem is added. */
    private boolean isFlat(Node node, String what, List<Point> corners) {
        Point normal = corners.size() < 3 ? new Point(0, 0, 0) : doubleArea(corners);
        if (normal.lengthM() < 2 * LEAST_AREA_M2) {
            problems.add(Problem.at(node.place(), what + " span no area")
                    .found("corners in one line, or in an order that crosses itself")
                    .mend("put the corners into the order in which one walks round the edge"));
            return false;
        }
        double offM = Facet.farthestFromPlaneM(corners);
        if (offM > Facet.FLATNESS_M) {
            problems.add(Problem.at(node.place(), what + " do not lie in one plane")
                    .found("a corner " + Wording.measure(Math.rint(offM * 1000) / 1000, "m") + " from the plane of all")
                    .allowed("at most " + Wording.measure(Facet.FLATNESS_M, "m"))
                    .mend("correct a corner, or divide it into triangles"));
            return false;
        }
        if (!new IsValidOp(new GeometryFactory().createPolygon(flattened(corners, normal))).isValid()) {
            problems.add(Problem.at(node.place(), what + " make an edge that crosses or touches itself")
                    .mend("put the corners into the order in which one walks round the edge"));
            return false;
        }
        return true;
    }

    /** The corners seen along the axis that is nearest to the normal, so that none fall together. */
    private static Coordinate[] flattened(List<Point> corners, Point normal) {
        double x = Math.abs(normal.xM());
        double y = Math.abs(normal.yM());
        double z = Math.abs(normal.zM());
        List<Coordinate> ring = new ArrayList<>();
        for (Point p : corners) {
            if (z >= x && z >= y) {
                ring.add(new Coordinate(p.xM(), p.yM()));
            } else {
                ring.add(new Coordinate(x >= y ? p.yM() : p.xM(), p.zM()));
            }
        }
        ring.add(ring.get(0).copy());
        return ring.toArray(Coordinate[]::new);
    }

    /** Twice the area of the corners as a vector at right angles to it. */
    private static Point doubleArea(List<Point> corners) {
        Point sum = new Point(0, 0, 0);
        Point origin = corners.get(0);
        for (int i = 1; i + 1 < corners.size(); i++) {
            Point a = corners.get(i).minus(origin);
            Point b = corners.get(i + 1).minus(origin);
            sum = sum.plus(new Point(
                    a.yM() * b.zM() - a.zM() * b.yM(),
                    a.zM() * b.xM() - a.xM() * b.zM(),
                    a.xM() * b.yM() - a.yM() * b.xM()));
        }
        return sum;
    }
}
