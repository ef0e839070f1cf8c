package limbway.scenarios.entry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.enclosure.ResourceKind;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problems;

/** Reads the entries under {@code resources}. */
final class ResourceReader {

    private static final String AT_ONCE = " at once";

    private final Problems problems;
    private final PlaceReader places;
    private final Values values;

    ResourceReader(Problems problems) {
        this.problems = problems;
        this.places = new PlaceReader(problems);
        this.values = new Values(problems);
    }

    /** Reads one resource; {@code form} is one of {@link Form#RESOURCES}. */
    Optional<ResourceEntry> read(MappingNode node, Form form) {
        ResourceKind kind = form.resourceKind().orElseThrow();
        Fields fields = Fields.of(node, form, problems);
        String id = fields.id();
        String key = fields.oneWay(
                        List.of("at", "on"), "where it is", "at: [x, y, z], or on: words such as mast-2 at 5.5")
                .orElse("at");
        Optional<PlaceWords> where = fields.read(key, value -> places.anywhere(value, "place of " + fields.what(), 2));
        int stalls = stalls(fields, kind);
        double bedding = form.keys().contains(Quantity.BEDDING.key()) ? fields.share(Quantity.BEDDING) : 0;
        return fields.build(
                () -> new ResourceEntry(id, fields.what(), fields.place(), kind, where.orElseThrow(), stalls, bedding));
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
