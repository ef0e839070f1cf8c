package limbway.scenarios.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.scenarios.format.ListNode;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.NumberText;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads single values: a number in its range, a list of numbers, words. */
public final class Values {

    private final Problems problems;

    /**
     * A reader of values.
     *
     * @param problems where mistakes go
     */
    public Values(Problems problems) {
        this.problems = problems;
    }

    /**
     * A number in its unit and range.
     *
     * @param node what the scenario says
     * @param quantity what the number is
     * @param what what it is the number of, for messages, for example {@code diameter of pole "mast-1"}
     * @return the number, or empty if a problem was added
     */
    public OptionalDouble number(Node node, Quantity quantity, String what) {
        if (node instanceof ScalarNode scalar && !scalar.text().isBlank()) {
            return number(node.place(), scalar.text().strip(), quantity, what);
        }
        words(node, what, quantity.range());
        return OptionalDouble.empty();
    }

    /**
     * The same for text that is a part of a longer one.
     *
     * @param place where it stands
     * @param text digits and perhaps a unit
     * @param quantity what the number is
     * @param what what it is the number of, for messages
     * @return the number, or empty if a problem was added
     */
    public OptionalDouble number(Place place, String text, Quantity quantity, String what) {
        Optional<NumberText> read = NumberText.of(text);
        if (read.isEmpty()) {
            problems.add(Problem.at(place, what + " is not a number")
                    .found(Wording.quote(text))
                    .allowed(quantity.range())
                    .mend(text.contains(",") ? "write a point, not a comma, before the decimals" : ""));
            return OptionalDouble.empty();
        }
        NumberText number = read.get();
        if (!quantity.isWrittenIn(number.unit())) {
            String headline = number.unit().isEmpty() ? " has no unit" : " is in another unit";
            String mend =
                    quantity.converted(number).map(value -> "write " + value).orElse("");
            if (quantity.unit().equals("%") && number.unit().isEmpty()) {
                mend = "write the percent sign, for example 5 %";
            }
            problems.add(Problem.at(place, what + headline)
                    .found(Wording.quote(text))
                    .allowed(quantity.range())
                    .mend(mend));
            return OptionalDouble.empty();
        }
        if (!quantity.allows(number.value())) {
            problems.add(Problem.at(place, what + " is outside what is plausible")
                    .found(Wording.measure(number.value(), quantity.unit()))
                    .allowed(quantity.range())
                    .mend(quantity.mend(number.value())));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(number.value());
    }

    /**
     * A share, written as a part of one or as a percentage.
     *
     * @param node what the scenario says
     * @param quantity a plain number from 0 to 1
     * @param what what it is the share of, for messages
     * @return the part of one, or empty if a problem was added
     */
    public OptionalDouble share(Node node, Quantity quantity, String what) {
        Optional<NumberText> read = node instanceof ScalarNode scalar ? NumberText.of(scalar.text()) : Optional.empty();
        boolean percent = read.isPresent() && read.get().unit().equals("%");
        if (read.isEmpty() || !(percent || read.get().unit().isEmpty())) {
            return number(node, quantity, what);
        }
        double share = percent ? read.get().value() / 100 : read.get().value();
        if (quantity.allows(share)) {
            return OptionalDouble.of(share);
        }
        boolean forgotten = !percent && share > 1 && quantity.allows(share / 100);
        problems.add(Problem.at(node.place(), what + " is outside what is plausible")
                .found(node.shown())
                .allowed(quantity.range() + ", or " + Wording.number(quantity.least() * 100) + " % to "
                        + Wording.number(quantity.most() * 100) + " %")
                .mend(forgotten ? "did you mean " + Wording.number(share) + " %?" : "correct the number"));
        return OptionalDouble.empty();
    }

    /**
     * A whole number.
     *
     * @param node what the scenario says
     * @param quantity what the number is
     * @param what what it is the number of, for messages
     * @return the number, or empty if a problem was added
     */
    public OptionalDouble wholeNumber(Node node, Quantity quantity, String what) {
        OptionalDouble number = number(node, quantity, what);
        if (number.isPresent() && number.getAsDouble() != Math.rint(number.getAsDouble())) {
            problems.add(Problem.at(node.place(), what + " is not a whole number")
                    .found(Wording.number(number.getAsDouble()))
                    .allowed("a whole number, " + quantity.range()));
            return OptionalDouble.empty();
        }
        return number;
    }

    /**
     * A list of numbers, one for each quantity.
     *
     * @param node what the scenario says
     * @param quantities what the numbers are
     * @param least how many must be there at least
     * @param what what they are, for messages
     * @param example how they are written
     * @return as many numbers as were written, or empty if a problem was added
     */
    public Optional<double[]> numbers(Node node, List<Quantity> quantities, int least, String what, String example) {
        if (!(node instanceof ListNode list)
                || list.items().size() < least
                || list.items().size() > quantities.size()) {
            problems.add(Problem.at(
                            node.place(), what + " is not a list of " + counts(least, quantities.size()) + " numbers")
                    .found(node.shown())
                    .allowed(example)
                    .mend(countMend(node, least, quantities.size(), "number")));
            return Optional.empty();
        }
        double[] values = new double[list.items().size()];
        boolean sound = true;
        for (int i = 0; i < values.length; i++) {
            OptionalDouble value = number(list.items().get(i), quantities.get(i), what);
            sound &= value.isPresent();
            values[i] = value.orElse(0);
        }
        return sound ? Optional.of(values) : Optional.empty();
    }

    /**
     * Words.
     *
     * @param node what the scenario says
     * @param what what the words are, for messages
     * @param allowed what they may be, for messages
     * @return the words without spaces at both ends, or empty if a problem was added
     */
    public Optional<String> words(Node node, String what, String allowed) {
        if (node instanceof ScalarNode scalar && !scalar.text().isBlank()) {
            return Optional.of(scalar.text().strip());
        }
        String headline = node instanceof ScalarNode ? " is empty" : " is not a single value";
        problems.add(
                Problem.at(node.place(), what + headline).found(node.shown()).allowed(allowed));
        return Optional.empty();
    }

    /**
     * The items of a list.
     *
     * @param node what the scenario says
     * @param what what it lists, for messages
     * @return the items; none if a problem was added
     */
    public List<Node> list(Node node, String what) {
        if (node instanceof ListNode list) {
            return list.items();
        }
        problems.add(Problem.at(node.place(), what + " is not a list")
                .found(node.shown())
                .allowed("lines that begin with a dash, or a list in square brackets"));
        return List.of();
    }

    /**
     * The items of a list that are keys with values.
     *
     * @param node what the scenario says
     * @param what what it lists, for messages
     * @return the items that have keys; the others are problems
     */
    public List<MappingNode> mappings(Node node, String what) {
        List<MappingNode> mappings = new ArrayList<>();
        for (Node item : list(node, what)) {
            mapping(item, "an entry of " + what).ifPresent(mappings::add);
        }
        return mappings;
    }

    /**
     * Keys with values.
     *
     * @param node what the scenario says
     * @param what what it is, for messages
     * @return the mapping, or empty if a problem was added
     */
    public Optional<MappingNode> mapping(Node node, String what) {
        if (node instanceof MappingNode mapping) {
            return Optional.of(mapping);
        }
        problems.add(Problem.at(node.place(), what + " has no keys with values")
                .found(node.shown())
                .allowed("keys and values, for example {key: value, other-key: value}"));
        return Optional.empty();
    }

    /** How to come to a list of the right length. */
    static String countMend(Node node, int least, int most, String noun) {
        if (!(node instanceof ListNode list)) {
            return "write them between [ and ], with commas between";
        }
        int count = list.items().size();
        int off = count < least ? least - count : count - most;
        return (count < least ? "add " : "take out ") + off + " " + noun + (off == 1 ? "" : "s");
    }

    private static String counts(int least, int most) {
        return least == most ? Integer.toString(least) : least + " or " + most;
    }
}
