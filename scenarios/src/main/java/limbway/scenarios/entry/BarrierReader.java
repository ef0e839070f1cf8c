package limbway.scenarios.entry;

import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.BarrierKind;
import limbway.model.geometry.Corner;
import limbway.scenarios.entry.BarrierEntry.ByLine;
import limbway.scenarios.entry.BarrierEntry.ByOutline;
import limbway.scenarios.entry.BarrierEntry.Hollow;
import limbway.scenarios.entry.BarrierEntry.Plan;
import limbway.scenarios.entry.BarrierEntry.Standing;
import limbway.scenarios.entry.BarrierEntry.Upright;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problems;

/** Reads the entries under {@code barriers}. */
final class BarrierReader {

    private static final double USUAL_WALL_M = 0.2;
    private static final double USUAL_PANE_M = 0.03;
    private static final double USUAL_DEPTH_M = 1.5;

    private static final PointsReader.Kind LINE =
            new PointsReader.Kind("point", PointsReader.XY, 2, "[[0, 0], [12, 0]]", "[x, y] in metres");

    private final Problems problems;
    private final OutlineReader outlines;
    private final PointsReader points;

    BarrierReader(Problems problems) {
        this.problems = problems;
        this.outlines = new OutlineReader(problems);
        this.points = new PointsReader(problems);
    }

    /** Reads one barrier; {@code form} is one of {@link Form#BARRIERS}. */
    Optional<BarrierEntry> read(MappingNode node, Form form) {
        Fields fields = Fields.of(node, form, problems);
        String id = fields.id();
        if (form == Form.OPEN_WATER) {
            Upright hollow = new Hollow(
                    fields.number("depth", Quantity.DEPTH).orElse(USUAL_DEPTH_M), fields.number("top", Quantity.TOP));
            return entry(fields, id, BarrierKind.WATER, "outline", outline(fields), hollow);
        }
        boolean glass = form == Form.GLASS;
        Upright standing = new Standing(fields.number("bottom", Quantity.BOTTOM), fields.number(Quantity.TOP));
        Optional<String> way = fields.oneWay(List.of("line", "outline"), "where it is", "one of: line, outline");
        if (way.isEmpty()) {
            return Optional.empty();
        }
        Optional<? extends Plan> plan =
                way.get().equals("line") ? line(fields, glass ? USUAL_PANE_M : USUAL_WALL_M) : outline(fields);
        if (way.get().equals("outline")) {
            fields.refuse(List.of("thickness"), "where the outline is given");
        }
        return entry(fields, id, glass ? BarrierKind.GLASS : BarrierKind.WALL, way.get(), plan, standing);
    }

    private static Optional<BarrierEntry> entry(
            Fields fields, String id, BarrierKind kind, String key, Optional<? extends Plan> plan, Upright upright) {
        Place planPlace = fields.find(key).map(Node::place).orElse(fields.place());
        return fields.build(() ->
                new BarrierEntry(id, fields.what(), fields.place(), kind, planPlace, plan.orElseThrow(), upright));
    }

    private Optional<ByOutline> outline(Fields fields) {
        return fields.read("outline", node -> outlines.read(node, "outline of " + fields.what()))
                .map(ByOutline::new);
    }

    private Optional<ByLine> line(Fields fields, double usualM) {
        double thicknessM = fields.number("thickness", Quantity.THICKNESS).orElse(usualM);
        return fields.read("line", node -> points.read(node, "line of " + fields.what(), LINE))
                .map(rows -> new ByLine(
                        rows.stream().map(xy -> new Corner(xy[0], xy[1])).toList(), thicknessM));
    }
}
