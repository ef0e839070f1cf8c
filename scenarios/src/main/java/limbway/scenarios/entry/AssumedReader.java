package limbway.scenarios.entry;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

import limbway.model.parameter.Assumable;
import limbway.model.parameter.Parameter;
import limbway.model.parameter.Situation;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.NumberText;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads what a scenario assumes: a situation, then single numbers, which win. */
public final class AssumedReader {

    private final Assumable assumable;
    private final Problems problems;
    private final Values values;

    /**
     * A reader of assumptions.
     *
     * @param assumable what may be assumed
     * @param problems where mistakes go
     */
    public AssumedReader(Assumable assumable, Problems problems) {
        this.assumable = assumable;
        this.problems = problems;
        this.values = new Values(problems);
    }

    /**
     * Reads the keys {@code situation} and {@code assume}.
     *
     * @param scenario the scenario
     * @return values by the names of parameters; wrong ones are left out and become problems
     */
    public SortedMap<String, Double> read(Fields scenario) {
        SortedMap<String, Double> assumed = new TreeMap<>();
        List<String> situations =
                assumable.situations().stream().map(Situation::name).toList();
        assumable
                .situation(scenario.oneOf("situation", situations, ""))
                .ifPresent(situation -> assumed.putAll(situation.values()));
        scenario.read("assume", node -> values.mapping(node, "assume"))
                .ifPresent(numbers -> numbers.entries().forEach(entry -> read(entry, assumed)));
        return assumed;
    }

    private void read(MappingNode.Entry entry, SortedMap<String, Double> assumed) {
        String name = entry.key().text().strip();
        Optional<Parameter> parameter = assumable.parameter(name);
        if (parameter.isPresent()) {
            number(entry.value(), parameter.get()).ifPresent(value -> assumed.put(name, value));
            return;
        }
        problems.add(new ParameterNames(assumable).unknown(entry.key().place(), name, "to assume", problems));
    }

    private Optional<Double> number(Node node, Parameter parameter) {
        String unit = parameter.unit().equals("1") ? "" : parameter.unit();
        String range = Wording.measure(parameter.low(), unit) + " to " + Wording.measure(parameter.high(), unit);
        String what = "value of " + parameter.name();
        if (!(node instanceof ScalarNode scalar) || scalar.text().isBlank()) {
            values.words(node, what, range);
            return Optional.empty();
        }
        Optional<NumberText> number = NumberText.of(scalar.text().strip());
        String wrong = "";
        if (number.isEmpty()) {
            wrong = " is not a number";
        } else if (!number.get().unit().isEmpty() && !number.get().unit().equals(unit)) {
            wrong = " is in another unit";
        } else if (number.get().value() < parameter.low() || number.get().value() > parameter.high()) {
            wrong = " is outside the range worth trying";
        }
        if (wrong.isEmpty()) {
            return Optional.of(number.get().value());
        }
        problems.add(Problem.at(node.place(), what + wrong)
                .found(node.shown())
                .allowed(range)
                .mend("it says " + parameter.meaning() + "; left out it is "
                        + Wording.measure(parameter.value(), unit)));
        return Optional.empty();
    }
}
