package limbway.scenarios.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.geometry.Corner;
import limbway.model.geometry.Point;
import limbway.scenarios.format.ListNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;

/** Reads a list of points: corners of an outline, the course of a line. */
final class PointsReader {

    static final List<Quantity> XY = List.of(Quantity.POSITION, Quantity.POSITION);

    private static final int MOST_POINTS = 200;

    /**
     * What the points are.
     *
     * @param noun what messages call one of them
     * @param quantities what its numbers are
     * @param least how many points there must be at least
     * @param example how the list is written
     * @param exampleOfOne how one of them is written
     */
    record Kind(String noun, List<Quantity> quantities, int least, String example, String exampleOfOne) {}

    private final Problems problems;
    private final Values values;

    PointsReader(Problems problems) {
        this.problems = problems;
        this.values = new Values(problems);
    }

    /** One place in plan, or empty after a problem. */
    Optional<Corner> corner(Node node, String what) {
        return values.numbers(node, XY, 2, what, "[x, y] in metres").map(xy -> new Corner(xy[0], xy[1]));
    }

    /** The numbers of every point, or empty after a problem. */
    Optional<List<double[]>> read(Node node, String what, Kind kind) {
        if (!(node instanceof ListNode list)
                || list.items().size() < kind.least()
                || list.items().size() > MOST_POINTS) {
            problems.add(Problem.at(node.place(), what + " is not a list of " + kind.noun() + "s")
                    .found(node.shown())
                    .allowed(kind.least() + " to " + MOST_POINTS + " " + kind.noun() + "s, for example "
                            + kind.example())
                    .mend(Values.countMend(node, kind.least(), MOST_POINTS, kind.noun())));
            return Optional.empty();
        }
        List<double[]> points = new ArrayList<>();
        for (Node item : list.items()) {
            values.numbers(
                            item,
                            kind.quantities(),
                            kind.quantities().size(),
                            "a " + kind.noun() + " of " + what,
                            kind.exampleOfOne())
                    .ifPresent(points::add);
        }
        return points.size() == list.items().size() ? Optional.of(points) : Optional.empty();
    }

    /** The points of a course in space, without those that repeat the one before. */
    static List<Point> inSpace(List<double[]> rows) {
        List<Point> points = new ArrayList<>();
        for (double[] row : rows) {
            Point point = new Point(row[0], row[1], row[2]);
            if (points.isEmpty() || !points.get(points.size() - 1).equals(point)) {
                points.add(point);
            }
        }
        return points;
    }
}
