package limbway.scenarios;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import limbway.model.parameter.Assumable;
import limbway.scenarios.entry.Fields;
import limbway.scenarios.entry.Form;
import limbway.scenarios.entry.Quantity;
import limbway.scenarios.entry.Values;
import limbway.scenarios.format.ListNode;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the key {@code sweep}: its factors, and how many points they make. */
final class PlanReader {

    private static final int MOST_FACTORS = 20;

    private final MappingNode scenario;
    private final FactorReader factors;
    private final Problems problems;
    private final Values values;

    PlanReader(MappingNode scenario, Assumable assumable, Problems problems) {
        this.scenario = scenario;
        this.factors = new FactorReader(scenario, assumable, problems);
        this.problems = problems;
        this.values = new Values(problems);
    }

    Optional<SweepPlan> read(Node node) {
        Optional<MappingNode> mapping = values.mapping(node, "sweep");
        if (mapping.isEmpty()) {
            return Optional.empty();
        }
        Fields fields = Fields.of(mapping.get(), Form.SWEEP, problems);
        boolean isFull = fields.oneOf("plan", List.of("full", "latin"), "full").equals("full");
        List<SweepFactor> read =
                fields.find("vary").map(vary -> readFactors(vary, isFull)).orElse(List.of());
        List<String> layouts = fields.find("variants").map(this::readLayouts).orElse(List.of(VariantReader.BASE_NAME));
        int points = fields.count(Quantity.POINTS, 0);
        if (isFull) {
            fields.refuse(List.of("points"), "where all combinations are tried");
        } else {
            fields.require("points", "20");
        }
        long count =
                isFull ? read.stream().mapToLong(factor -> factor.ends().size()).reduce(1, PlanReader::times) : points;
        if (count > SweepPlan.MOST_POINTS) {
            fields.fault(Problem.at(node.place(), "this sweep has too many points")
                    .found(sizes(read) + (read.size() > 1 ? " = " + count + " combinations" : ""))
                    .allowed("at most " + SweepPlan.MOST_POINTS)
                    .mend("give fewer values, or spread the points: plan: latin, points: 100"));
        }
        return problems.isEmpty()
                ? fields.build(() -> new SweepPlan(isFull, (int) count, read, layouts))
                : Optional.empty();
    }

    /** A product that stays where it is once it is beyond all limits. */
    private static long times(long a, long b) {
        return Math.min(1_000_000_000_000L, a * b);
    }

    private static String sizes(List<SweepFactor> factors) {
        return String.join(
                " × ",
                factors.stream()
                        .map(factor -> Integer.toString(factor.ends().size()))
                        .toList());
    }

    private List<SweepFactor> readFactors(Node vary, boolean isFull) {
        List<MappingNode> entries = values.mappings(vary, "vary");
        if (vary instanceof ListNode && entries.isEmpty()) {
            problems.add(Problem.at(vary.place(), "this sweep varies nothing")
                    .mend("add an entry such as {of: rope-1, key: sag, values: [2 %, 5 %]}"));
        }
        if (entries.size() > MOST_FACTORS) {
            problems.add(Problem.at(vary.place(), "this sweep varies too many things")
                    .found(Integer.toString(entries.size()))
                    .allowed("at most " + MOST_FACTORS));
            return List.of();
        }
        Map<SweepFactor, Place> read = new LinkedHashMap<>();
        for (MappingNode entry : entries) {
            factors.read(entry, isFull).ifPresent(factor -> {
                refuseContradiction(read, factor, entry.place());
                read.put(factor, entry.place());
            });
        }
        return List.copyOf(read.keySet());
    }

    private void refuseContradiction(Map<SweepFactor, Place> earlier, SweepFactor factor, Place place) {
        earlier.forEach((other, otherPlace) -> {
            if (FactorReader.contradict(other, factor)) {
                problems.add(Problem.at(place, factor.name() + " cannot be varied beside " + other.name())
                        .found("the other is at " + otherPlace)
                        .mend("both say the same: take one of them out"));
            }
        });
    }

    private List<String> readLayouts(Node node) {
        List<String> known = new ArrayList<>(List.of(VariantReader.BASE_NAME));
        scenario.find("variants").filter(ListNode.class::isInstance).ifPresent(list -> ((ListNode) list)
                .items().stream()
                        .filter(MappingNode.class::isInstance)
                        .flatMap(item -> ((MappingNode) item).find("name").stream())
                        .filter(ScalarNode.class::isInstance)
                        .forEach(name -> known.add(((ScalarNode) name).text().strip())));
        Set<String> layouts = new LinkedHashSet<>();
        List<Node> items = values.list(node, "variants of sweep");
        if (node instanceof ListNode && items.isEmpty()) {
            problems.add(Problem.at(node.place(), "this sweep lives in no layout")
                    .allowed(Wording.list(known))
                    .mend("name one or more, or take the key out"));
        }
        for (Node item : items) {
            Optional<String> name = values.words(item, "a variant of sweep", Wording.list(known));
            if (name.isPresent() && !known.contains(name.get())) {
                problems.add(Problem.at(item.place(), "there is no variant called " + Wording.quote(name.get()))
                        .allowed(Wording.list(known))
                        .mend(problems.didYouMean(name.get(), known, "take one of these names")));
            } else if (name.isPresent() && !layouts.add(name.get())) {
                problems.add(Problem.at(item.place(), "this variant is named twice")
                        .found(Wording.quote(name.get()))
                        .mend("take one of them out"));
            }
        }
        return List.copyOf(layouts);
    }
}
