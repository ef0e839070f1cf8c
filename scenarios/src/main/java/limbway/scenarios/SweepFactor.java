package limbway.scenarios;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.scenarios.format.ListNode;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Place;

/** One thing that a sweep varies: the values of a list, or a range. */
public final class SweepFactor {

    /** Figures that count in a value taken from a range. */
    private static final MathContext FIGURES = new MathContext(6);

    /**
     * A range.
     *
     * @param from least value
     * @param to greatest value, above {@code from}
     * @param unit what is written after the number, or empty
     * @param place where it stands
     */
    record Range(double from, double to, String unit, Place place) {

        Node at(double share) {
            double value = from + share * (to - from);
            String digits = BigDecimal.valueOf(value)
                    .round(FIGURES)
                    .stripTrailingZeros()
                    .toPlainString();
            return new ScalarNode(place, unit.isEmpty() ? digits : digits + " " + unit);
        }
    }

    /**
     * Where the values go.
     *
     * @param name what messages and tables call it
     * @param entries places of the entries; none for the assumed numbers
     * @param key the key, or the name of the parameter
     */
    record Target(String name, List<Place> entries, ScalarNode key) {

        Target {
            entries = List.copyOf(entries);
        }
    }

    private final Target target;
    private final List<Node> values;
    private final Optional<Range> range;

    private SweepFactor(Target target, List<Node> values, Optional<Range> range) {
        this.target = target;
        this.values = List.copyOf(values);
        this.range = range;
    }

    static SweepFactor listed(Target target, List<Node> values) {
        return new SweepFactor(target, values, Optional.empty());
    }

    static SweepFactor range(Target target, Range range) {
        return new SweepFactor(target, List.of(), Optional.of(range));
    }

    static SweepFactor steps(Target target, Range range, int steps) {
        List<Node> values = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            values.add(range.at((double) i / (steps - 1)));
        }
        return listed(target, values);
    }

    /**
     * What is varied.
     *
     * @return name of the entry, a point and its key, before them the list where several have such an entry; or the name of a
     *     parameter; unique within a sweep
     */
    public String name() {
        return target.name();
    }

    /**
     * Whether it may have any value of a range.
     *
     * @return false if it has the values of a list
     */
    public boolean isRange() {
        return range.isPresent();
    }

    /**
     * The values, as they are written in the scenario.
     *
     * @return the values of the list; of a range its two ends
     */
    public List<String> levels() {
        return ends().stream().map(SweepFactor::text).toList();
    }

    /**
     * Whether it is an assumed number of the model, not a key of an entry.
     *
     * @return true for a parameter
     */
    public boolean isAssumed() {
        return target.entries().isEmpty();
    }

    /** The values of the list, or the two ends of the range. */
    List<Node> ends() {
        return range.map(r -> List.of(r.at(0), r.at(1))).orElse(values);
    }

    /** The value at a share of the range or the list. */
    Node at(double share) {
        return range.map(r -> r.at(share))
                .orElseGet(() -> values.get((int) Math.min(values.size() - 1, share * values.size())));
    }

    Target target() {
        return target;
    }

    static String text(Node node) {
        if (node instanceof ListNode list) {
            return "["
                    + String.join(
                            ", ", list.items().stream().map(SweepFactor::text).toList()) + "]";
        }
        if (node instanceof MappingNode mapping) {
            return "{"
                    + String.join(
                            ", ",
                            mapping.entries().stream()
                                    .map(entry -> entry.key().text() + ": " + text(entry.value()))
                                    .toList())
                    + "}";
        }
        return ((ScalarNode) node).text();
    }
}
