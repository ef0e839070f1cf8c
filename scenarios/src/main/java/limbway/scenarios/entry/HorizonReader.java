package limbway.scenarios.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.Horizon;
import limbway.model.enclosure.Horizon.Mark;
import limbway.scenarios.format.ListNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads how high the land around a site stands before the sky. */
final class HorizonReader {

    private static final String EXAMPLE = "[azimuth, altitude] in degrees, azimuth 0 in the north and 90 in the east";
    private static final PointsReader.Kind MARKS = new PointsReader.Kind(
            "mark", List.of(Quantity.AZIMUTH, Quantity.ALTITUDE), 1, "[[0, 2], [90, 12], [180, 5]]", EXAMPLE);

    private final Problems problems;
    private final PointsReader points;

    HorizonReader(Problems problems) {
        this.problems = problems;
        this.points = new PointsReader(problems);
    }

    /** The horizon, or empty after problems. */
    Optional<Horizon> read(Node node) {
        return points.read(node, "the horizon", MARKS).flatMap(rows -> inOrder(rows, (ListNode) node));
    }

    private Optional<Horizon> inOrder(List<double[]> rows, ListNode node) {
        List<Mark> marks = new ArrayList<>();
        double beforeDeg = -1;
        for (int i = 0; i < rows.size(); i++) {
            double azimuthDeg = rows.get(i)[0];
            if (azimuthDeg < 360 && azimuthDeg > beforeDeg) {
                marks.add(new Mark(azimuthDeg, rows.get(i)[1]));
            } else {
                problems.add(misplaced(node.items().get(i).place(), azimuthDeg, beforeDeg));
            }
            beforeDeg = azimuthDeg;
        }
        return marks.size() == rows.size() ? Optional.of(new Horizon(marks)) : Optional.empty();
    }

    private static Problem misplaced(Place place, double azimuthDeg, double beforeDeg) {
        String mark = "mark of the horizon at " + degrees(azimuthDeg);
        if (azimuthDeg == 360) {
            return Problem.at(place, mark + " is north once more")
                    .mend("write north once, as 0 at the beginning: the horizon closes by itself");
        }
        if (azimuthDeg == beforeDeg) {
            return Problem.at(place, mark + " is written twice").mend("give each direction one height");
        }
        return Problem.at(place, mark + " comes after " + degrees(beforeDeg))
                .mend("put the marks into the order of the compass: north, east, south, west");
    }

    private static String degrees(double deg) {
        return Wording.measure(deg, "degrees");
    }
}
