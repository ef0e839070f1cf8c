package limbway.scenarios.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.scenarios.format.ListNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads an outline: corners in order, the last joined to the first. */
final class OutlineReader {

    private static final int MOST_CORNERS = 200;
    private static final List<Quantity> XY = List.of(Quantity.POSITION, Quantity.POSITION);

    private final Problems problems;
    private final Values values;

    OutlineReader(Problems problems) {
        this.problems = problems;
        this.values = new Values(problems);
    }

    Optional<Outline> read(Node node, String what) {
        if (!(node instanceof ListNode list)
                || list.items().size() < 3
                || list.items().size() > MOST_CORNERS) {
            problems.add(Problem.at(node.place(), what + " is not a list of corners")
                    .found(node.shown())
                    .allowed("3 to " + MOST_CORNERS + " corners, for example [[0, 0], [30, 0], [30, 20]]"));
            return Optional.empty();
        }
        List<Corner> corners = new ArrayList<>();
        boolean sound = true;
        for (Node item : list.items()) {
            Optional<double[]> corner = values.numbers(item, XY, 2, "a corner of " + what, "[x, y] in metres");
            sound &= corner.isPresent();
            corner.ifPresent(xy -> corners.add(new Corner(xy[0], xy[1])));
        }
        return sound ? simple(node, what, withoutClosingCorner(corners)) : Optional.empty();
    }

    /** Some programs repeat the first corner at the end; that says the same. */
    private static List<Corner> withoutClosingCorner(List<Corner> corners) {
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
