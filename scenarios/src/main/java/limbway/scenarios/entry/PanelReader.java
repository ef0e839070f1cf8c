package limbway.scenarios.entry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.enclosure.PanelKind;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Point;
import limbway.scenarios.entry.PanelEntry.ByCorners;
import limbway.scenarios.entry.PanelEntry.Shape;
import limbway.scenarios.entry.PanelEntry.Upright;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the entries under {@code panels}. */
final class PanelReader {

    private static final double USUAL_OPENING_M = 0.05;
    private static final double USUAL_WIRE_M = 0.004;
    private static final double USUAL_NET_ROPE_M = 0.012;

    /** How far a net gives, assumption: a body of 35 kg pushes it in by some 20 cm. */
    private static final double USUAL_NET_STIFFNESS_N_PER_M = 1500;

    /** A panel narrower than this is none [m]. */
    private static final double NARROWEST_M = 0.05;

    private final Problems problems;
    private final FacetReader facets;
    private final PointsReader points;

    PanelReader(Problems problems) {
        this.problems = problems;
        this.facets = new FacetReader(problems);
        this.points = new PointsReader(problems);
    }

    /** Reads one panel; {@code form} is one of {@link Form#PANELS}. */
    Optional<PanelEntry> read(MappingNode node, Form form) {
        PanelKind kind = form == Form.NET ? PanelKind.NET : PanelKind.MESH;
        boolean net = kind == PanelKind.NET;
        Fields fields = Fields.of(node, form, problems);
        String id = fields.id();
        double openingM = fields.number("opening", Quantity.OPENING).orElse(USUAL_OPENING_M);
        double strandM = fields.number("strand", Quantity.STRAND).orElse(net ? USUAL_NET_ROPE_M : USUAL_WIRE_M);
        OptionalDouble stated = fields.number("stiffness", Quantity.STIFFNESS);
        OptionalDouble stiffness = stated.isEmpty() && net ? OptionalDouble.of(USUAL_NET_STIFFNESS_N_PER_M) : stated;
        Optional<String> way = fields.oneWay(
                List.of("corners", "from", "outline"),
                "where it is",
                "one of: corners, from (with to and top), outline (with height)");
        if (way.isEmpty()) {
            return Optional.empty();
        }
        Place shapePlace = fields.find(way.get()).orElse(node).place();
        Optional<? extends Shape> shape =
                switch (way.get()) {
                    case "corners" -> byCorners(fields);
                    case "from" -> upright(fields);
                    default -> level(fields);
                };
        return fields.build(() -> new PanelEntry(
                id,
                fields.what(),
                fields.place(),
                kind,
                shapePlace,
                shape.orElseThrow(),
                openingM,
                strandM,
                stiffness));
    }

    private Optional<ByCorners> byCorners(Fields fields) {
        fields.refuse(List.of("to", "bottom", "top", "height"), "where the corners are given");
        return facets.byCorners(fields).map(ByCorners::new);
    }

    private Optional<ByCorners> level(Fields fields) {
        fields.refuse(List.of("to", "bottom", "top"), "where the outline is given");
        return facets.level(fields).map(ByCorners::new);
    }

    private Optional<Upright> upright(Fields fields) {
        fields.refuse(List.of("height"), "where bottom and top say it");
        fields.require("to", "[8, 0]");
        fields.require("top", "4.0");
        Optional<Corner> from = fields.read("from", node -> points.corner(node, "start of " + fields.what()));
        Optional<Corner> to = fields.read("to", node -> points.corner(node, "end of " + fields.what()));
        OptionalDouble bottomM = fields.number("bottom", Quantity.BOTTOM);
        double topM = fields.number(Quantity.TOP);
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        Point start = from.get().atHeight(0);
        if (start.distanceM(to.get().atHeight(0)) < NARROWEST_M) {
            fields.fault(Problem.at(fields.find("to").orElseThrow().place(), fields.what() + " has no width")
                    .found("both ends at [" + Wording.number(start.xM()) + ", " + Wording.number(start.yM()) + "]")
                    .mend("let it end somewhere else"));
        }
        return Optional.of(new Upright(from.get(), to.get(), bottomM, topM));
    }
}
