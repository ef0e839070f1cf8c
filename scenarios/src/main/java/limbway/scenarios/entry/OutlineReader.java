package limbway.scenarios.entry;

import java.util.List;
import java.util.Optional;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.scenarios.format.Node;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads an outline: corners in order, the last joined to the first. */
final class OutlineReader {

    private static final PointsReader.Kind CORNERS =
            new PointsReader.Kind("corner", PointsReader.XY, 3, "[[0, 0], [30, 0], [30, 20]]", "[x, y] in metres");

    private final Problems problems;
    private final PointsReader points;

    OutlineReader(Problems problems) {
        this.problems = problems;
        this.points = new PointsReader(problems);
    }

    Optional<Outline> read(Node node, String what) {
        return points.read(node, what, CORNERS)
                .flatMap(corners -> simple(
                        node,
                        what,
                        withoutClosingCorner(corners.stream()
                                .map(xy -> new Corner(xy[0], xy[1]))
                                .toList())));
    }

    /** Some programs repeat the first corner at the end; that says the same. */
    static <T> List<T> withoutClosingCorner(List<T> corners) {
        int last = corners.size() - 1;
        return last >= 3 && corners.get(0).equals(corners.get(last)) ? corners.subList(0, last) : corners;
    }

    private Optional<Outline> simple(Node node, String what, List<Corner> corners) {
        Outline outline = new Outline(corners);
        TopologyValidationError error = new IsValidOp(outline.toPolygon()).getValidationError();
        if (error == null) {
            return Optional.of(outline);
        }
        Coordinate at = error.getCoordinate();
        String where = "[" + Wording.number(at.x) + ", " + Wording.number(at.y) + "]";
        problems.add(Problem.at(node.place(), what + " crosses or touches itself")
                .found("a crossing at " + where)
                .mend("put the corners into the order in which one walks round the edge"));
        return Optional.empty();
    }
}
