package limbway.scenarios.entry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.enclosure.PlatformKind;
import limbway.model.geometry.Outline;
import limbway.scenarios.entry.SupportEntry.DeckByOutline;
import limbway.scenarios.entry.SupportEntry.DeckBySize;
import limbway.scenarios.problem.Problems;

/** Reads decks and hammocks. */
final class DeckReader {

    private final OutlineReader outlines;
    private final PlaceReader places;
    private final Values values;

    DeckReader(Problems problems) {
        this.outlines = new OutlineReader(problems);
        this.places = new PlaceReader(problems);
        this.values = new Values(problems);
    }

    Optional<? extends SupportEntry> read(Fields fields, String id, PlatformKind kind) {
        OptionalDouble bearsKg = fields.number("bears", Quantity.BEARS);
        Optional<String> way = fields.oneWay(List.of("on", "at", "outline"), "where it is", "one of: on, at, outline");
        if (way.isEmpty()) {
            return Optional.empty();
        }
        return way.get().equals("outline")
                ? byOutline(fields, id, kind, bearsKg)
                : bySize(fields, id, kind, bearsKg, way.get());
    }

    private Optional<DeckByOutline> byOutline(Fields fields, String id, PlatformKind kind, OptionalDouble bearsKg) {
        fields.refuse(List.of("size", "turn"), "where the outline is given");
        fields.require("height", "3.5");
        Optional<Outline> outline = fields.read("outline", node -> outlines.read(node, "outline of " + fields.what()));
        double heightM = fields.number(Quantity.HEIGHT);
        return fields.build(() ->
                new DeckByOutline(id, fields.what(), fields.place(), kind, bearsKg, outline.orElseThrow(), heightM));
    }

    private Optional<DeckBySize> bySize(
            Fields fields, String id, PlatformKind kind, OptionalDouble bearsKg, String key) {
        fields.refuse(List.of("height"), "where \"" + key + "\" says the height");
        fields.require("size", "[2.0, 1.5]");
        String where = "place of " + fields.what();
        Optional<PlaceWords> middle = fields.read(key, node -> places.anywhere(node, where));
        List<Quantity> sides = List.of(Quantity.SIDE, Quantity.SIDE);
        Optional<double[]> size = fields.read(
                "size", node -> values.numbers(node, sides, 2, "size of " + fields.what(), "[east, north] in metres"));
        double turnDeg = fields.number("turn", Quantity.TURN).orElse(0);
        return fields.build(() -> new DeckBySize(
                id,
                fields.what(),
                fields.place(),
                kind,
                bearsKg,
                middle.orElse(PlaceReader.standIn(fields.place())),
                size.orElseThrow()[0],
                size.orElseThrow()[1],
                turnDeg));
    }
}
