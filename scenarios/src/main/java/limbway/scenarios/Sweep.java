package limbway.scenarios;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import limbway.model.parameter.Assumable;
import limbway.model.study.Study;
import limbway.scenarios.format.ListNode;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.format.SourceText;
import limbway.scenarios.format.YamlTree;
import limbway.scenarios.layout.NamedEntries;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;

/** A scenario that can be read with other values in the place of those that it says. */
public final class Sweep {

    /** So many mistakes of combinations are told. */
    private static final int MOST_TOLD = 20;

    private final String name;
    private final byte[] bytes;
    private final Path folder;
    private final Assumable assumable;
    private final MappingNode scenario;
    private final SweepPlan plan;

    private Sweep(String name, byte[] bytes, Path folder, Assumable assumable, MappingNode scenario, SweepPlan plan) {
        this.name = name;
        this.bytes = bytes.clone();
        this.folder = folder;
        this.assumable = assumable;
        this.scenario = scenario;
        this.plan = plan;
    }

    /**
     * Reads a scenario file with its sweep; what it says without the sweep must be sound.
     *
     * @param path the file; messages name it as it is given here
     * @param assumable numbers and situations that it may set by name
     * @return the sweep, or every mistake
     */
    public static SweepReading read(Path path, Assumable assumable) {
        Problems problems = new Problems();
        String name = path.toString();
        Optional<byte[]> bytes = ScenarioFile.read(path, Place.startOf(name), SourceText.MAX_BYTES, problems);
        if (bytes.isEmpty()) {
            return new SweepReading.Refused(problems.inOrder(name));
        }
        return read(name, bytes.get(), path.resolveSibling(""), assumable);
    }

    static SweepReading read(String name, byte[] bytes, Path folder, Assumable assumable) {
        Reading base = ScenarioReader.read(name, bytes, folder, assumable, new Problems());
        if (base instanceof Reading.Refused refused) {
            return new SweepReading.Refused(refused.problems());
        }
        Problems problems = new Problems();
        MappingNode scenario = SourceText.decode(name, bytes, SourceText.MAX_BYTES, problems)
                .flatMap(text -> YamlTree.parse(name, text, problems))
                .map(MappingNode.class::cast)
                .orElseThrow();
        Optional<Node> node = scenario.find("sweep");
        if (node.isEmpty()) {
            return new SweepReading.Refused(
                    List.of(
                            Problem.at(scenario.place(), "this scenario says nothing to sweep")
                                    .mend(
                                            "add the key sweep, for example sweep: {vary: [{of: rope-1, key: sag, values: [2 %, 5 %]}]}")));
        }
        SweepPlan plan =
                new PlanReader(scenario, assumable, problems).read(node.get()).orElseThrow();
        return new SweepReading.Read(new Sweep(name, bytes, folder, assumable, scenario, plan));
    }

    /**
     * What is to be tried.
     *
     * @return the plan
     */
    public SweepPlan plan() {
        return plan;
    }

    /**
     * Reads the scenario with the values of a point.
     *
     * @param point a point of the plan
     * @param layouts names of the layouts that are wanted; the layout as drawn is always read, other variants are left out
     * @return the study, or every mistake
     */
    public Reading read(SweepPoint point, List<String> layouts) {
        return read(edits(point), point, layouts);
    }

    private Reading read(Map<Place, List<MappingNode>> edits, SweepPoint point, List<String> layouts) {
        MappingNode edited = (MappingNode) NamedEntries.edited(scenario.without(Set.of("sweep")), edits);
        return new StudyReader(name, bytes, folder, assumable, new Problems())
                .read(only(layouts, assumed(edited, point)));
    }

    private static Map<Place, List<MappingNode>> edits(SweepPoint point) {
        Map<Place, List<MappingNode>> edits = new LinkedHashMap<>();
        List<SweepFactor> factors = point.factors();
        for (int f = 0; f < factors.size(); f++) {
            SweepFactor.Target target = factors.get(f).target();
            MappingNode edit = edit(target.key(), point.node(f));
            target.entries().forEach(entry -> edits.computeIfAbsent(entry, place -> new ArrayList<>())
                    .add(edit));
        }
        return edits;
    }

    private static MappingNode edit(ScalarNode key, Node value) {
        return new MappingNode(value.place(), List.of(new MappingNode.Entry(key, value)));
    }

    private static MappingNode assumed(MappingNode root, SweepPoint point) {
        MappingNode result = root;
        List<SweepFactor> factors = point.factors();
        for (int f = 0; f < factors.size(); f++) {
            if (factors.get(f).target().entries().isEmpty()) {
                ScalarNode parameter = factors.get(f).target().key();
                MappingNode number = edit(parameter, point.node(f));
                Node numbers = result.find("assume")
                        .filter(MappingNode.class::isInstance)
                        .map(old -> (Node) ((MappingNode) old).with(number))
                        .orElse(number);
                result = new MappingNode(
                        root.place(),
                        result.with(edit(new ScalarNode(parameter.place(), "assume"), numbers))
                                .entries());
            }
        }
        return result;
    }

    private static MappingNode only(List<String> layouts, MappingNode root) {
        if (!(root.find("variants").orElse(root) instanceof ListNode variants)) {
            return root;
        }
        List<Node> kept = variants.items().stream()
                .filter(item -> item instanceof MappingNode variant
                        && variant.find("name").orElse(variant) instanceof ScalarNode called
                        && layouts.contains(called.text().strip()))
                .toList();
        MappingNode less = edit(new ScalarNode(variants.place(), "variants"), new ListNode(variants.place(), kept));
        return new MappingNode(root.place(), root.with(less).entries());
    }

    /**
     * Looks whether the scenario is sound at all points: first every value alone, then all combinations.
     *
     * @param points points of the plan
     * @param layouts names of the layouts that are wanted
     * @return mistakes in the order of the file; none if all is well
     */
    public List<Problem> check(List<SweepPoint> points, List<String> layouts) {
        Map<String, Problem> found = new LinkedHashMap<>();
        for (SweepFactor factor : plan.factors()) {
            for (Node value : factor.ends()) {
                SweepPoint alone = new SweepPoint(List.of(factor), List.of(value), List.of(0.0));
                note(read(alone, layouts), alone, found);
            }
        }
        for (SweepPoint point : found.isEmpty() ? points : List.<SweepPoint>of()) {
            if (found.size() < MOST_TOLD) {
                note(read(point, layouts), point, found);
            }
        }
        Problems problems = new Problems();
        found.values().forEach(problems::add);
        return problems.inOrder(name);
    }

    /**
     * Which factors do nothing in which layouts: all their values give the same, because a change of the layout writes the same
     * key anew, or because what is varied is not there.
     *
     * @param layouts names of the layouts that are wanted
     * @return a sentence for each, by factor, then by layout; the scenario must be sound at every value
     */
    public List<String> withoutEffect(List<String> layouts) {
        List<String> idle = new ArrayList<>();
        for (SweepFactor factor : plan.factors()) {
            Map<String, Set<List<Object>>> seen = new LinkedHashMap<>();
            for (Node value : factor.ends()) {
                SweepPoint alone = new SweepPoint(List.of(factor), List.of(value), List.of(0.0));
                if (read(alone, layouts) instanceof Reading.Read read) {
                    Study study = read.study();
                    for (String layout : layouts) {
                        study.find(layout)
                                .ifPresent(variant -> seen.computeIfAbsent(layout, name -> new LinkedHashSet<>())
                                        .add(List.of(variant, study.animals(), study.climate(), study.assumed())));
                    }
                }
            }
            seen.forEach((layout, different) -> {
                if (different.size() == 1) {
                    idle.add(factor.name() + " does nothing in the layout " + layout
                            + ": its changes write the same anew, or what is varied is not there");
                }
            });
        }
        return idle;
    }

    private static void note(Reading reading, SweepPoint point, Map<String, Problem> found) {
        if (reading instanceof Reading.Refused refused) {
            Set<Place> values = new LinkedHashSet<>();
            for (int f = 0; f < point.factors().size(); f++) {
                values.add(point.node(f).place());
            }
            boolean alone = point.factors().size() == 1;
            for (Problem problem : refused.problems()) {
                Problem told = alone && values.contains(problem.place())
                        ? problem
                        : new Problem(
                                problem.place(),
                                problem.headline() + ", with " + point.words(),
                                problem.found(),
                                problem.allowed(),
                                problem.mend());
                found.putIfAbsent(problem.place() + problem.headline(), told);
            }
        }
    }
}
