package limbway.scenarios.entry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.enclosure.ResourceKind;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the entries under {@code resources}. */
public final class ResourceReader {

    private static final String AT_ONCE = " at once";

    private final Problems problems;
    private final PlaceReader places;
    private final Values values;

    /**
     * A reader of resources.
     *
     * @param problems where mistakes go
     */
    public ResourceReader(Problems problems) {
        this.problems = problems;
        this.places = new PlaceReader(problems);
        this.values = new Values(problems);
    }

    /**
     * Reads one resource.
     *
     * @param node the entry
     * @param form what kind it is, one of {@link Form#RESOURCES}
     * @return the resource, or empty if a problem was added
     */
    public Optional<ResourceEntry> read(MappingNode node, Form form) {
        ResourceKind kind = form.resourceKind().orElseThrow();
        Fields fields = Fields.of(node, form, problems);
        String id = fields.id();
        List<String> used = List.of("at", "on").stream()
                .filter(key -> fields.find(key).isPresent())
                .toList();
        if (used.size() != 1) {
            fields.fault(Problem.at(fields.place(), fields.what() + " must say in one way where it is")
                    .found(used.isEmpty() ? "none" : Wording.list(used))
                    .allowed("at: [x, y, z], or on: words such as mast-2 at 5.5"));
        }
        String key = used.isEmpty() ? "at" : used.get(0);
        Optional<PlaceWords> where = fields.read(key, value -> places.anywhere(value, "place of " + fields.what()));
        int stalls = stalls(fields, kind);
        return fields.build(
                () -> new ResourceEntry(id, fields.what(), fields.place(), kind, where.orElseThrow(), stalls));
    }

    /** Reads {@code 4} or {@code 4 at once}; shade and retreat take two without a word, the others one. */
    private int stalls(Fields fields, ResourceKind kind) {
        int usual = kind == ResourceKind.SHADE || kind == ResourceKind.RETREAT ? 2 : 1;
        return fields.read("portions", node -> {
                    String what = "portions of " + fields.what();
                    if (node instanceof ScalarNode scalar && scalar.text().endsWith(AT_ONCE)) {
                        int end = scalar.text().length() - AT_ONCE.length();
                        ScalarNode number =
                                new ScalarNode(scalar.place(), scalar.text().substring(0, end));
                        return boxed(values.wholeNumber(number, Quantity.PORTIONS, what));
                    }
                    return boxed(values.wholeNumber(node, Quantity.PORTIONS, what));
                })
                .orElse(usual);
    }

    private static Optional<Integer> boxed(OptionalDouble value) {
        return value.isPresent() ? Optional.of((int) value.getAsDouble()) : Optional.empty();
    }
}
