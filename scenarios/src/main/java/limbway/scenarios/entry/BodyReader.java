package limbway.scenarios.entry;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.body.Speeds;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the entries under {@code bodies}. */
public final class BodyReader {

    private static final int MOST_BODIES = 50;
    private static final int LONGEST_NAME = 40;
    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} _-]*");

    /** One measure of a body. */
    record Figure(Quantity quantity, ToDoubleFunction<Body> of) {}

    static final List<Figure> FIGURES = List.of(
            new Figure(Quantity.MASS, Body::massKg),
            new Figure(Quantity.STRUCTURAL_MASS, Body::structuralMassKg),
            new Figure(Quantity.ARM_SPAN, Body::armSpanM),
            new Figure(Quantity.GAP_REACH, Body::gapReachM),
            new Figure(Quantity.OVERHEAD_REACH, Body::overheadReachM),
            new Figure(Quantity.LEAP, Body::leapM),
            new Figure(Quantity.TAKE_OFF, Body::takeOffMPerS),
            new Figure(Quantity.GRIP_DIAMETER, Body::gripDiameterM),
            new Figure(Quantity.HUG_DIAMETER, Body::hugDiameterM),
            new Figure(Quantity.WALKWAY_DIAMETER, Body::walkwayDiameterM));

    /** What a body without a model may leave out: who says nothing of leaps does not leap. */
    private static final List<Quantity> NOT_NEEDED =
            List.of(Quantity.STRUCTURAL_MASS, Quantity.LEAP, Quantity.TAKE_OFF);

    private final BodyCatalogue catalogue;
    private final Problems problems;
    private final Values values;

    /**
     * A reader of bodies.
     *
     * @param catalogue the bodies that others may be like
     * @param problems where mistakes go
     */
    public BodyReader(BodyCatalogue catalogue, Problems problems) {
        this.catalogue = catalogue;
        this.problems = problems;
        this.values = new Values(problems);
    }

    /**
     * Reads the bodies that a scenario defines.
     *
     * @param node the list of bodies
     * @return the bodies with those of the catalogue; after a problem with stand-ins, so that the animals can be read on
     */
    public Bodies read(Node node) {
        List<MappingNode> entries = values.mappings(node, "bodies");
        if (entries.size() > MOST_BODIES) {
            problems.add(Problem.at(node.place(), "there are too many bodies")
                    .found(Integer.toString(entries.size()))
                    .allowed("at most " + MOST_BODIES));
            return new Bodies(catalogue, List.of());
        }
        Map<String, Place> names = new LinkedHashMap<>();
        List<Bodies.Own> own = new ArrayList<>();
        entries.forEach(entry -> own.add(read(entry, names).orElseGet(() -> standIn(entry))));
        return new Bodies(catalogue, own);
    }

    private Bodies.Own standIn(MappingNode entry) {
        Body any = catalogue.find(catalogue.names().get(0)).orElseThrow();
        Map<Quantity, Double> figures = new EnumMap<>(Quantity.class);
        FIGURES.forEach(figure -> figures.put(figure.quantity(), figure.of().applyAsDouble(any)));
        Body body = body(wordAt(entry, "body"), figures, any.brachiates(), any.speeds());
        return new Bodies.Own(body, wordAt(entry, "like"), List.of());
    }

    private static String wordAt(MappingNode entry, String key) {
        return entry.find(key)
                .filter(ScalarNode.class::isInstance)
                .map(node -> ((ScalarNode) node).text().strip())
                .orElse("?");
    }

    private Optional<Bodies.Own> read(MappingNode entry, Map<String, Place> names) {
        Fields fields = Fields.of(entry, Form.BODY, problems);
        String name = fields.words("body", "a name of its own", "?");
        fields.find("body").ifPresent(node -> checkName(fields, node.place(), name, names));
        String like = fields.oneOf("like", catalogue.names(), "");
        Optional<Body> model = catalogue.find(like);
        Map<Quantity, Double> figures = new EnumMap<>(Quantity.class);
        for (Figure figure : FIGURES) {
            Quantity quantity = figure.quantity();
            OptionalDouble stated = fields.number(quantity.key(), quantity);
            model.ifPresent(body -> figures.put(quantity, figure.of().applyAsDouble(body)));
            stated.ifPresent(value -> figures.put(quantity, value));
        }
        requireFigures(fields, figures);
        OptionalDouble massKg = fields.number("mass", Quantity.MASS);
        massKg.ifPresent(value -> figures.merge(Quantity.STRUCTURAL_MASS, value, Math::max));
        boolean brachiates = fields.yesNo("brachiates")
                .orElse(model.isPresent() && model.get().brachiates());
        Body usual =
                model.orElseGet(() -> catalogue.find(catalogue.names().get(0)).orElseThrow());
        Optional<Speeds> speeds = fields.find("speeds").isEmpty()
                ? Optional.of(usual.speeds())
                : fields.read("speeds", node -> speeds(node, fields, usual.speeds()));
        BodyRules.check(fields, figures);
        return fields.build(() -> {
            Body body = body(name, figures, brachiates, speeds.orElseThrow());
            return new Bodies.Own(body, like, BodyParameters.of(body, fields, like, catalogue));
        });
    }

    private void checkName(Fields fields, Place place, String name, Map<String, Place> names) {
        if (name.length() > LONGEST_NAME || !NAME.matcher(name).matches()) {
            fields.fault(Problem.at(place, "this name cannot be used")
                    .found(Wording.quote(name))
                    .allowed("letters, digits, spaces, - and _, at most " + LONGEST_NAME + " of them"));
        }
        if (catalogue.find(name).isPresent()) {
            fields.fault(Problem.at(place, "the catalogue has a body of that name")
                    .found(Wording.quote(name))
                    .mend("take another name, and say like: " + name));
        }
        Place earlier = names.putIfAbsent(name, place);
        if (earlier != null) {
            fields.fault(Problem.at(place, "two bodies are called " + Wording.quote(name))
                    .found("the first is at " + earlier)
                    .mend("give each a name of its own"));
        }
    }

    private static void requireFigures(Fields fields, Map<Quantity, Double> figures) {
        List<String> missing = FIGURES.stream()
                .map(Figure::quantity)
                .filter(quantity -> !NOT_NEEDED.contains(quantity) && !figures.containsKey(quantity))
                .map(Quantity::key)
                .filter(key -> fields.find(key).isEmpty())
                .toList();
        if (!missing.isEmpty() && fields.find("like").isEmpty()) {
            fields.fault(Problem.at(fields.place(), fields.what() + " does not say enough")
                    .found("nothing of " + Wording.list(missing))
                    .allowed("all of these, or the name of a body that it is like")
                    .mend("add the missing figures, or for example like: adult female"));
        }
    }

    private Optional<Speeds> speeds(Node node, Fields body, Speeds usual) {
        return values.mapping(node, "speeds of " + body.what()).flatMap(mapping -> {
            Fields fields = Fields.of(mapping, Form.SPEEDS, problems);
            double walk = fields.number("walk", Quantity.SPEED).orElse(usual.walkMPerS());
            double climb = fields.number("climb", Quantity.SPEED).orElse(usual.climbMPerS());
            double descend = fields.number("descend", Quantity.SPEED).orElse(usual.descendMPerS());
            double clamber = fields.number("clamber", Quantity.SPEED).orElse(usual.clamberMPerS());
            double brachiate = fields.number("brachiate", Quantity.SPEED).orElse(usual.brachiateMPerS());
            return fields.build(() -> new Speeds(walk, climb, descend, clamber, brachiate));
        });
    }

    private static Body body(String name, Map<Quantity, Double> figures, boolean brachiates, Speeds speeds) {
        return new Body(
                name,
                figures.get(Quantity.MASS),
                figures.get(Quantity.STRUCTURAL_MASS),
                figures.get(Quantity.ARM_SPAN),
                figures.get(Quantity.GAP_REACH),
                figures.get(Quantity.OVERHEAD_REACH),
                figures.getOrDefault(Quantity.LEAP, 0.0),
                figures.getOrDefault(Quantity.TAKE_OFF, 0.0),
                figures.get(Quantity.GRIP_DIAMETER),
                figures.get(Quantity.HUG_DIAMETER),
                figures.get(Quantity.WALKWAY_DIAMETER),
                brachiates,
                speeds);
    }
}
