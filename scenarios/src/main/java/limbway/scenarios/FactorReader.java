package limbway.scenarios;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import limbway.model.parameter.Assumable;
import limbway.scenarios.entry.Fields;
import limbway.scenarios.entry.Form;
import limbway.scenarios.entry.ParameterNames;
import limbway.scenarios.entry.Quantity;
import limbway.scenarios.entry.Values;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.NumberText;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.layout.NamedEntries;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads one entry under {@code vary}. */
final class FactorReader {

    private static final int LEAST_VALUES = 2;

    private static final int MOST_VALUES = 50;

    private final NamedEntries entries;
    private final Assumable assumable;
    private final Problems problems;
    private final Values values;

    FactorReader(MappingNode scenario, Assumable assumable, Problems problems) {
        this.entries = new NamedEntries(scenario);
        this.assumable = assumable;
        this.problems = problems;
        this.values = new Values(problems);
    }

    /** Whether two factors write the same key of an entry, or say the same in two ways. */
    static boolean contradict(SweepFactor one, SweepFactor other) {
        SweepFactor.Target a = one.target();
        SweepFactor.Target b = other.target();
        boolean sameEntry = a.entries().isEmpty()
                ? b.entries().isEmpty()
                : a.entries().stream().anyMatch(b.entries()::contains);
        return sameEntry
                && (a.entries().isEmpty()
                        ? a.key().text().equals(b.key().text())
                        : NamedEntries.exclude(a.key().text(), b.key().text()));
    }

    Optional<SweepFactor> read(MappingNode entry, boolean isFull) {
        Fields fields = Fields.of(entry, Form.VARY, problems);
        Optional<String> way = fields.oneWay(
                List.of("of", "assume"), "what is varied", "of with key, or assume with the name of a parameter");
        if (way.isEmpty()) {
            return Optional.empty();
        }
        Optional<SweepFactor.Target> target;
        if (way.get().equals("assume")) {
            fields.refuse(List.of("key", "in"), "beside assume");
            ScalarNode parameter = fields.placedWords("assume", "the name of a parameter");
            target = assumed(fields, parameter);
        } else {
            fields.require("key", "sag");
            ScalarNode of = fields.placedWords("of", "the name of an entry");
            ScalarNode key = fields.placedWords("key", "a key of that entry");
            target = fields.build(() -> of).flatMap(sound -> find(fields, sound, key));
        }
        Optional<SweepFactor> factor = target.flatMap(found -> factor(fields, found, isFull));
        return fields.build(() -> factor).flatMap(sound -> sound);
    }

    private Optional<SweepFactor.Target> assumed(Fields fields, ScalarNode name) {
        ParameterNames known = new ParameterNames(assumable);
        if (fields.build(() -> name).isEmpty()) {
            return Optional.empty();
        }
        if (!known.contains(name.text())) {
            fields.fault(known.unknown(name.place(), name.text(), "to vary", problems));
            return Optional.empty();
        }
        return Optional.of(new SweepFactor.Target(name.text(), List.of(), name));
    }

    private Optional<SweepFactor.Target> find(Fields fields, ScalarNode of, ScalarNode key) {
        List<NamedEntries.Found> called = entries.called(of.text());
        if (called.isEmpty()) {
            fields.fault(Problem.at(of.place(), "there is nothing called " + of.shown() + " to vary")
                    .allowed(Wording.list(entries.names()))
                    .mend(problems.didYouMean(of.text(), entries.names(), "")));
            return Optional.empty();
        }
        Set<String> lists = new LinkedHashSet<>();
        Set<String> keys = new LinkedHashSet<>();
        called.forEach(entry -> keys.addAll(entry.keys()));
        List<NamedEntries.Found> having =
                called.stream().filter(e -> e.keys().contains(key.text())).toList();
        having.forEach(entry -> lists.add(entry.list()));
        if (having.isEmpty()) {
            fields.fault(Problem.at(key.place(), Wording.quote(of.text()) + " has no key " + key.shown())
                    .allowed(Wording.list(keys))
                    .mend(problems.didYouMean(key.text(), keys, "take one of these")));
            return Optional.empty();
        }
        String in = lists.iterator().next();
        if (fields.find("in").isPresent()) {
            in = fields.oneOf("in", List.copyOf(lists), in);
        } else if (lists.size() > 1) {
            fields.fault(Problem.at(of.place(), "several lists have a " + of.shown() + " with the key " + key.shown())
                    .found(Wording.list(lists))
                    .mend("say which is meant: in: " + in));
        }
        String list = in;
        return Optional.of(new SweepFactor.Target(
                (lists.size() > 1 ? list + "." : "") + of.text() + "." + key.text(),
                having.stream()
                        .filter(entry -> entry.list().equals(list))
                        .map(entry -> entry.entry().place())
                        .toList(),
                key));
    }

    private Optional<SweepFactor> factor(Fields fields, SweepFactor.Target target, boolean isFull) {
        Optional<String> way =
                fields.oneWay(List.of("values", "from"), "what values it takes", "values with a list, or from and to");
        if (way.isEmpty()) {
            return Optional.empty();
        }
        if (way.get().equals("values")) {
            fields.refuse(List.of("to", "steps"), "beside values");
            return listed(fields, fields.find("values").orElseThrow()).map(list -> SweepFactor.listed(target, list));
        }
        fields.require("to", "...");
        int steps = fields.count(Quantity.STEPS, 0);
        if (isFull) {
            fields.require("steps", "5");
        } else {
            fields.refuse(List.of("steps"), "where points are spread over the whole range");
        }
        return range(fields)
                .map(range -> isFull
                        ? SweepFactor.steps(target, range, Math.max(LEAST_VALUES, steps))
                        : SweepFactor.range(target, range));
    }

    private Optional<List<Node>> listed(Fields fields, Node node) {
        List<Node> list = values.list(node, "values of vary");
        List<Node> kept = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (Node item : list) {
            if (seen.add(SweepFactor.text(item))) {
                kept.add(item);
            } else {
                fields.fault(Problem.at(item.place(), "this value is written twice")
                        .found(SweepFactor.text(item))
                        .mend("take one of them out"));
            }
        }
        if (list.size() < LEAST_VALUES || list.size() > MOST_VALUES) {
            fields.fault(Problem.at(node.place(), "values of vary are not 2 to " + MOST_VALUES)
                    .found(node.shown())
                    .mend(list.size() < LEAST_VALUES ? "one value is no sweep: add another" : "take some out"));
            return Optional.empty();
        }
        return Optional.of(kept);
    }

    private Optional<SweepFactor.Range> range(Fields fields) {
        Optional<Node> from = fields.find("from");
        Optional<Node> to = fields.find("to");
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        Optional<NumberText> low = number(fields, from.get(), "from");
        Optional<NumberText> high = number(fields, to.get(), "to");
        if (low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        if (!low.get().unit().equals(high.get().unit())) {
            fields.fault(Problem.at(to.get().place(), "from and to of vary are in different units")
                    .found(from.get().shown() + " and " + to.get().shown())
                    .mend("write both in the same unit"));
            return Optional.empty();
        }
        if (!(high.get().value() > low.get().value())) {
            fields.fault(Problem.at(to.get().place(), "to of vary is not above from")
                    .found(from.get().shown() + " and " + to.get().shown())
                    .mend("write the smaller number after from"));
            return Optional.empty();
        }
        return Optional.of(new SweepFactor.Range(
                low.get().value(),
                high.get().value(),
                low.get().unit(),
                from.get().place()));
    }

    private Optional<NumberText> number(Fields fields, Node node, String key) {
        Optional<NumberText> number =
                node instanceof ScalarNode scalar ? NumberText.of(scalar.text()) : Optional.empty();
        if (number.isEmpty()) {
            fields.fault(Problem.at(node.place(), key + " of vary is not a number")
                    .found(node.shown())
                    .mend("words are written as values: [one, other]"));
        }
        return number;
    }
}
