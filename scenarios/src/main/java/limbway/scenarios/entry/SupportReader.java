package limbway.scenarios.entry;

import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.Material;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.scenarios.entry.PlaceWords.Coordinates;
import limbway.scenarios.entry.SupportEntry.CrownSize;
import limbway.scenarios.entry.SupportEntry.DeckByOutline;
import limbway.scenarios.entry.SupportEntry.DeckBySize;
import limbway.scenarios.entry.SupportEntry.Lean;
import limbway.scenarios.entry.SupportEntry.Span;
import limbway.scenarios.entry.SupportEntry.Upright;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the entries under {@code supports}. */
public final class SupportReader {

    /** Sag of a rope that does not say its own, as a share of its span: assumption, see the format's documentation. */
    private static final double USUAL_SAG_PERCENT = 5;

    private static final Lean UPRIGHT = new Lean(0, 0);

    private final Problems problems;
    private final PlaceReader places;
    private final Values values;

    /**
     * A reader of supports.
     *
     * @param problems where mistakes go
     */
    public SupportReader(Problems problems) {
        this.problems = problems;
        this.places = new PlaceReader(problems);
        this.values = new Values(problems);
    }

    /**
     * Reads one support.
     *
     * @param node the entry
     * @param form what kind it is, one of {@link Form#SUPPORTS}
     * @return the support, or empty if a problem was added
     */
    public Optional<? extends SupportEntry> read(MappingNode node, Form form) {
        Fields fields = Fields.of(node, form, problems);
        String id = fields.id();
        return switch (form) {
            case POLE -> upright(fields, id, SupportKind.POLE, Quantity.DIAMETER, Material.TIMBER);
            case TRUNK -> upright(fields, id, SupportKind.TRUNK, Quantity.TRUNK_DIAMETER, Material.BARK);
            case BEAM -> span(fields, id, SupportKind.BEAM, Material.TIMBER);
            case ROPE -> span(fields, id, SupportKind.ROPE, Material.FIBRE_ROPE);
            case PLATFORM -> deck(fields, id);
            default -> throw new IllegalArgumentException("form = " + form + ", allowed " + Form.SUPPORTS);
        };
    }

    private Optional<Upright> upright(Fields fields, String id, SupportKind kind, Quantity thickness, Material usual) {
        Optional<Coordinates> foot = fields.read("at", node -> places.coordinates(node, "foot of " + fields.what(), 2));
        double heightM = fields.number(Quantity.HEIGHT);
        double diameterM = fields.number(thickness);
        Material material = fields.material(usual);
        Optional<Lean> lean = fields.read("lean", node -> lean(node, fields));
        Optional<CrownSize> crown = crown(fields, heightM);
        return fields.build(() -> new Upright(
                id,
                fields.what(),
                fields.place(),
                kind,
                foot.orElse(standIn(fields.place())),
                heightM,
                diameterM,
                material,
                lean.orElse(UPRIGHT),
                crown));
    }

    private Optional<Lean> lean(Node node, Fields pole) {
        return values.mapping(node, "lean of " + pole.what()).flatMap(mapping -> {
            Fields fields = Fields.of(mapping, Form.LEAN, problems);
            double fromUprightDeg = fields.number(Quantity.LEAN);
            double towardsDeg = fields.number(Quantity.BEARING);
            return fields.build(() -> new Lean(fromUprightDeg, towardsDeg));
        });
    }

    private Optional<CrownSize> crown(Fields fields, double heightM) {
        Optional<Node> radius = fields.find(Quantity.CROWN_RADIUS.key());
        Optional<Node> base = fields.find(Quantity.CROWN_BASE.key());
        if (radius.isEmpty() && base.isEmpty()) {
            return Optional.empty();
        }
        if (radius.isEmpty() || base.isEmpty()) {
            String missing = radius.isEmpty() ? Quantity.CROWN_RADIUS.key() : Quantity.CROWN_BASE.key();
            fields.fault(Problem.at(radius.or(() -> base).get().place(), fields.what() + " has half a crown")
                    .allowed("both crown-radius and crown-base, or none of them")
                    .mend("add " + missing + ": ..."));
            return Optional.empty();
        }
        double radiusM = fields.number(Quantity.CROWN_RADIUS);
        double baseM = fields.number(Quantity.CROWN_BASE);
        if (baseM >= heightM) {
            fields.fault(Problem.at(base.get().place(), "crown of " + fields.what() + " begins above its top")
                    .found(Wording.measure(baseM, "m"))
                    .allowed("below the height, " + Wording.measure(heightM, "m")));
        }
        return Optional.of(new CrownSize(radiusM, baseM));
    }

    private Optional<Span> span(Fields fields, String id, SupportKind kind, Material usual) {
        Optional<PlaceWords> from = fields.read("from", node -> places.anywhere(node, "start of " + fields.what()));
        Optional<PlaceWords> to = fields.read("to", node -> places.anywhere(node, "end of " + fields.what()));
        double diameterM = fields.number(Quantity.DIAMETER);
        double sag =
                kind == SupportKind.ROPE ? fields.number("sag", Quantity.SAG).orElse(USUAL_SAG_PERCENT) : 0;
        Material material = fields.material(usual);
        PlaceWords none = standIn(fields.place());
        return fields.build(() -> new Span(
                id,
                fields.what(),
                fields.place(),
                kind,
                from.orElse(none),
                to.orElse(none),
                diameterM,
                sag / 100,
                material));
    }

    private Optional<? extends SupportEntry> deck(Fields fields, String id) {
        List<String> ways = List.of("on", "at", "outline");
        List<String> used =
                ways.stream().filter(key -> fields.find(key).isPresent()).toList();
        if (used.size() != 1) {
            fields.fault(Problem.at(fields.place(), fields.what() + " must say in one way where it is")
                    .found(used.isEmpty() ? "none" : Wording.list(used))
                    .allowed("one of: on, at, outline"));
            return Optional.empty();
        }
        return used.get(0).equals("outline") ? deckByOutline(fields, id) : deckBySize(fields, id, used.get(0));
    }

    private Optional<DeckByOutline> deckByOutline(Fields fields, String id) {
        refuse(fields, List.of("size", "turn"), "where the outline is given");
        require(fields, "height", "3.5");
        OutlineReader outlines = new OutlineReader(problems);
        Optional<Outline> outline = fields.read("outline", node -> outlines.read(node, "outline of " + fields.what()));
        double heightM = fields.number(Quantity.HEIGHT);
        return fields.build(() -> new DeckByOutline(id, fields.what(), fields.place(), outline.orElseThrow(), heightM));
    }

    private Optional<DeckBySize> deckBySize(Fields fields, String id, String key) {
        refuse(fields, List.of("height"), "where \"" + key + "\" says the height");
        require(fields, "size", "[2.0, 1.5]");
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
                middle.orElse(standIn(fields.place())),
                size.orElseThrow()[0],
                size.orElseThrow()[1],
                turnDeg));
    }

    private static void refuse(Fields fields, List<String> keys, String where) {
        for (String key : keys) {
            fields.find(key)
                    .ifPresent(node -> fields.fault(
                            Problem.at(node.place(), key + " of " + fields.what() + " is not needed " + where)
                                    .mend("take it out")));
        }
    }

    private static void require(Fields fields, String key, String example) {
        if (fields.find(key).isEmpty()) {
            fields.fault(Problem.at(fields.place(), fields.what() + " has no " + Wording.quote(key))
                    .mend("add " + key + ": " + example));
        }
    }

    private static Coordinates standIn(Place place) {
        return new Coordinates(place, new Point(0, 0, 0));
    }
}
