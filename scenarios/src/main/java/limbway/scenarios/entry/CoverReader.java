package limbway.scenarios.entry;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import limbway.model.enclosure.CoverKind;
import limbway.scenarios.entry.CoverEntry.ByCorners;
import limbway.scenarios.entry.CoverEntry.OverDeck;
import limbway.scenarios.entry.CoverEntry.Shape;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;

/** Reads the entries under {@code covers}. */
final class CoverReader {

    private static final String LIGHT = Quantity.TRANSMITTANCE.key();

    private final Values values;
    private final FacetReader facets;
    private final Problems problems;

    CoverReader(Problems problems) {
        this.problems = problems;
        this.values = new Values(problems);
        this.facets = new FacetReader(problems);
    }

    /** Reads one cover; {@code form} is one of {@link Form#COVERS}. */
    Optional<CoverEntry> read(MappingNode node, Form form) {
        boolean roof = form == Form.ROOF;
        Fields fields = Fields.of(roof ? node.without(Set.of(LIGHT)) : node, form, problems);
        String id = fields.id();
        if (roof) {
            node.find(LIGHT)
                    .ifPresent(value -> fields.fault(Problem.at(
                                    value.place(),
                                    fields.what() + " has a transmittance, but a roof lets no sunlight through")
                            .found(value.shown())
                            .mend("take it out, or write sail instead of roof")));
        }
        double transmittance = roof ? 0 : fields.share(Quantity.TRANSMITTANCE);
        Optional<String> way = fields.oneWay(
                List.of("corners", "outline", "over"),
                "where it is",
                "one of: corners, outline (with height), over (with size and rise)");
        if (way.isEmpty()) {
            return Optional.empty();
        }
        Place shapePlace = fields.find(way.get()).orElse(node).place();
        Optional<? extends Shape> shape =
                switch (way.get()) {
                    case "corners" -> byCorners(fields);
                    case "outline" -> level(fields);
                    default -> overDeck(fields);
                };
        CoverKind kind = roof ? CoverKind.ROOF : CoverKind.SAIL;
        return fields.build(() -> new CoverEntry(
                id, fields.what(), fields.place(), kind, shapePlace, shape.orElseThrow(), transmittance));
    }

    private Optional<ByCorners> byCorners(Fields fields) {
        fields.refuse(List.of("height", "size", "rise", "shift"), "where the corners are given");
        return facets.byCorners(fields).map(ByCorners::new);
    }

    private Optional<ByCorners> level(Fields fields) {
        fields.refuse(List.of("size", "rise", "shift"), "where the outline is given");
        return facets.level(fields).map(ByCorners::new);
    }

    private Optional<OverDeck> overDeck(Fields fields) {
        fields.require("size", "[3, 3]");
        Optional<Node> height = fields.find("height");
        if (height.isEmpty()) {
            fields.require("rise", "2.5");
        }
        height.ifPresent(value -> fields.fault(
                Problem.at(value.place(), fields.what() + " has a height from the ground and lies over a deck")
                        .mend("write rise instead: how far above the deck it lies")));
        ScalarNode deck = fields.placedWords("over", "the name of a platform or hammock");
        Optional<double[]> size = pair(fields, "size", Quantity.SIDE);
        double riseM = fields.number(Quantity.RISE);
        double[] shift = pair(fields, "shift", Quantity.SHIFT).orElse(new double[2]);
        return size.map(sides -> new OverDeck(deck, sides[0], sides[1], riseM, shift[0], shift[1]));
    }

    private Optional<double[]> pair(Fields fields, String key, Quantity each) {
        return fields.read(
                key,
                node -> values.numbers(
                        node, List.of(each, each), 2, key + " of " + fields.what(), "[east, north] in metres"));
    }
}
