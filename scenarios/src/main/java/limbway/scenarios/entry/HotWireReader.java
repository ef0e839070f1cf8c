package limbway.scenarios.entry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.scenarios.entry.HotWireEntry.Planting;
import limbway.scenarios.entry.HotWireEntry.Strand;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;

/** Reads the entries under {@code hot-wires}. */
final class HotWireReader {

    /** How far animals keep away from live wire: assumption. */
    private static final double USUAL_CLEARANCE_M = 0.5;

    private static final PointsReader.Kind LINE =
            new PointsReader.Kind("point", PlaceReader.XYZ, 2, "[[0, 0, 3], [12, 0, 3]]", "[x, y, z] in metres");

    private final Problems problems;
    private final OutlineReader outlines;
    private final PointsReader points;

    HotWireReader(Problems problems) {
        this.problems = problems;
        this.outlines = new OutlineReader(problems);
        this.points = new PointsReader(problems);
    }

    /** Reads one hot wire; {@code form} is one of {@link Form#HOT_WIRES}. */
    Optional<? extends HotWireEntry> read(MappingNode node, Form form) {
        Fields fields = Fields.of(node, form, problems);
        String id = fields.id();
        double clearanceM = fields.number("clearance", Quantity.CLEARANCE).orElse(USUAL_CLEARANCE_M);
        return form == Form.STRAND ? strand(fields, id, clearanceM) : planting(fields, id, clearanceM);
    }

    private Optional<Strand> strand(Fields fields, String id, double clearanceM) {
        Optional<List<Point>> line = fields.read("line", node -> points.read(node, "line of " + fields.what(), LINE))
                .map(PointsReader::inSpace);
        if (line.isPresent() && line.get().size() < 2) {
            fields.fault(Problem.at(placeOf(fields, "line"), fields.what() + " has no length")
                    .mend("let it end somewhere else"));
        }
        return fields.build(() ->
                new Strand(id, fields.what(), fields.place(), placeOf(fields, "line"), line.orElseThrow(), clearanceM));
    }

    private Optional<Planting> planting(Fields fields, String id, double clearanceM) {
        Optional<Outline> outline = fields.read("outline", node -> outlines.read(node, "outline of " + fields.what()));
        OptionalDouble bottomM = fields.number("bottom", Quantity.BOTTOM);
        double topM = fields.number(Quantity.TOP);
        return fields.build(() -> new Planting(
                id,
                fields.what(),
                fields.place(),
                placeOf(fields, "outline"),
                outline.orElseThrow(),
                bottomM,
                topM,
                clearanceM));
    }

    private static Place placeOf(Fields fields, String key) {
        return fields.find(key).map(Node::place).orElse(fields.place());
    }
}
