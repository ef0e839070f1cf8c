package limbway.scenarios.entry;

import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.geometry.Outline;
import limbway.scenarios.entry.PlaceWords.Coordinates;
import limbway.scenarios.entry.SupportEntry.CrownSize;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.problem.Problems;

/** Reads the entries under {@code neighbours}. */
final class NeighbourReader {

    private final Problems problems;
    private final OutlineReader outlines;
    private final PlaceReader places;
    private final FoliageReader crowns;

    NeighbourReader(Problems problems) {
        this.problems = problems;
        this.outlines = new OutlineReader(problems);
        this.places = new PlaceReader(problems);
        this.crowns = new FoliageReader(problems);
    }

    /** Reads one neighbour; {@code form} is one of {@link Form#NEIGHBOURS}. */
    Optional<? extends NeighbourEntry> read(MappingNode node, Form form) {
        Fields fields = Fields.of(node, form, problems);
        String id = fields.id();
        return form == Form.BUILDING ? building(fields, id) : tree(fields, id);
    }

    private Optional<NeighbourEntry.Block> building(Fields fields, String id) {
        Optional<Outline> outline = fields.read("outline", node -> outlines.read(node, "outline of " + fields.what()));
        OptionalDouble bottomM = fields.number("bottom", Quantity.BOTTOM);
        double topM = fields.number(Quantity.BUILDING_TOP);
        return fields.build(() ->
                new NeighbourEntry.Block(id, fields.what(), fields.place(), outline.orElseThrow(), bottomM, topM));
    }

    private Optional<NeighbourEntry.Tree> tree(Fields fields, String id) {
        Optional<Coordinates> foot = fields.read("at", node -> places.coordinates(node, "foot of " + fields.what(), 2));
        double heightM = fields.number(Quantity.HEIGHT);
        boolean whole = fields.find(Quantity.CROWN_BASE.key()).isPresent();
        Optional<CrownSize> crown = whole ? Optional.of(crowns.size(fields, heightM)) : Optional.empty();
        return fields.build(() -> new NeighbourEntry.Tree(
                id, fields.what(), fields.place(), foot.orElseThrow(), heightM, crown.orElseThrow()));
    }
}
