package limbway.scenarios.entry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.enclosure.OpenHours;
import limbway.model.geometry.Corner;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;

/** Reads the entries under {@code doors}. */
final class DoorReader {

    /** Height of a door that does not say its own: assumption, an ape passes on all fours. */
    private static final double USUAL_HEIGHT_M = 1.2;

    /** A door narrower than this is none [m]. */
    private static final double NARROWEST_M = 0.1;

    private final Problems problems;
    private final PointsReader points;
    private final OpenHoursReader hours;

    DoorReader(Problems problems) {
        this.problems = problems;
        this.points = new PointsReader(problems);
        this.hours = new OpenHoursReader(problems);
    }

    Optional<DoorEntry> read(MappingNode node) {
        Fields fields = Fields.of(node, Form.DOOR, problems);
        String id = fields.id();
        ScalarNode in = fields.placedWords("in", "the name of a panel, wall or pane");
        Optional<Corner> from = fields.read("from", value -> points.corner(value, "start of " + fields.what()));
        Optional<Corner> to = fields.read("to", value -> points.corner(value, "end of " + fields.what()));
        OptionalDouble sillM = fields.number("sill", Quantity.SILL);
        double heightM = fields.number("height", Quantity.HEIGHT).orElse(USUAL_HEIGHT_M);
        Optional<List<OpenHours>> open = fields.read("open", value -> hours.read(value, "hours of " + fields.what()));
        if (from.isPresent()
                && to.isPresent()
                && from.get().atHeight(0).distanceM(to.get().atHeight(0)) < NARROWEST_M) {
            fields.fault(Problem.at(fields.find("to").orElse(node).place(), fields.what() + " is too narrow")
                    .allowed("at least 0.1 m between from and to"));
        }
        return fields.build(() -> new DoorEntry(
                id,
                fields.what(),
                fields.place(),
                in,
                from.orElseThrow(),
                to.orElseThrow(),
                sillM,
                heightM,
                open.orElseThrow()));
    }
}
