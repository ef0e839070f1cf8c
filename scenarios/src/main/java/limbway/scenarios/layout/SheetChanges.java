package limbway.scenarios.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import limbway.scenarios.entry.Fields;
import limbway.scenarios.entry.Form;
import limbway.scenarios.entry.References;
import limbway.scenarios.entry.Values;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Applies the changes of a variant to the entries of the base, one after the other. */
public final class SheetChanges {

    /** Keys that say where something is; a move by one of them replaces all. */
    private static final Set<String> WHEREABOUTS = Set.of("at", "on", "outline");

    private static final int MOST_CHANGES = 500;

    /** An entry in one of the lists; the slot of a removed entry is empty, so that no other moves. */
    private record Spot(List<Optional<MappingNode>> list, int index) {

        void set(Optional<MappingNode> entry) {
            list.set(index, entry);
        }

        /** A move by coordinates drops an earlier place on a support, and the other way round. */
        void merge(MappingNode changes) {
            boolean moved = changes.keys().stream().anyMatch(WHEREABOUTS::contains);
            set(list.get(index).map(old -> (moved ? old.without(WHEREABOUTS) : old).with(changes)));
        }
    }

    private final Problems problems;
    private final Values values;
    private final List<Optional<MappingNode>> supports = new ArrayList<>();
    private final List<Optional<MappingNode>> resources = new ArrayList<>();
    private final List<MappingNode> keepers;
    private final Map<String, Spot> spots = new LinkedHashMap<>();
    private final Map<String, ScalarNode> removed = new LinkedHashMap<>();
    private final Set<String> fedAnew = new LinkedHashSet<>();

    /**
     * Starts from a sheet, which is not changed itself.
     *
     * @param base the entries of the base
     * @param problems where mistakes go
     */
    public SheetChanges(Sheet base, Problems problems) {
        this.problems = problems;
        this.values = new Values(problems);
        base.supports().forEach(entry -> put(entry, supports, Form.SUPPORTS));
        base.resources().forEach(entry -> put(entry, resources, Form.RESOURCES));
        this.keepers = new ArrayList<>(base.keepers());
    }

    private void put(MappingNode entry, List<Optional<MappingNode>> list, List<Form> kinds) {
        list.add(Optional.of(entry));
        EntryKind.of(entry, kinds)
                .flatMap(kind -> EntryKind.nameOf(entry, kind))
                .ifPresent(name -> spots.putIfAbsent(name, new Spot(list, list.size() - 1)));
    }

    /**
     * Applies all changes of a list.
     *
     * @param changes the list in the scenario
     * @return the changed entries
     */
    public Sheet apply(Node changes) {
        List<MappingNode> list = values.mappings(changes, "changes");
        if (list.size() > MOST_CHANGES) {
            problems.add(Problem.at(changes.place(), "there are too many changes")
                    .found(Integer.toString(list.size()))
                    .allowed("at most " + MOST_CHANGES));
            list = List.of();
        }
        for (MappingNode change : list) {
            EntryKind.require(change, Form.CHANGES, "changes", problems).ifPresent(form -> apply(change, form));
        }
        List<MappingNode> keptSupports = kept(supports);
        List<MappingNode> keptResources = kept(resources);
        if (!removed.isEmpty()) {
            reportWhatHangsOnRemoved(keptSupports, keptResources);
        }
        return new Sheet(keptSupports, keptResources, keepers, changes.place(), changes.place());
    }

    private static List<MappingNode> kept(List<Optional<MappingNode>> entries) {
        return entries.stream().flatMap(Optional::stream).toList();
    }

    /**
     * Names that were removed and not added again.
     *
     * @return names in the order of their removal
     */
    public Set<String> gone() {
        return removed.keySet();
    }

    private void apply(MappingNode change, Form form) {
        if (form == Form.FEED) {
            EntryKind.nameOf(change, form).filter(fedAnew::add).ifPresent(this::unfeed);
            keepers.add(change);
            return;
        }
        Fields fields = Fields.of(change, form, problems);
        if (form == Form.ADD) {
            fields.read("add", node -> values.mapping(node, "add")).ifPresent(this::add);
            return;
        }
        ScalarNode name = fields.placedWords(form.word(), "a name");
        if (fields.build(() -> name).isEmpty()) {
            return;
        }
        if (form == Form.UNFEED) {
            if (!unfeed(name.text())) {
                problems.add(Problem.at(name.place(), "nobody feeds " + name.shown())
                        .allowed(Wording.list(fed()))
                        .mend(problems.didYouMean(name.text(), fed(), "take this change out")));
            }
            return;
        }
        Spot spot = spots.get(name.text());
        if (spot == null) {
            problems.add(Problem.at(name.place(), "there is nothing called " + name.shown() + " to change")
                    .allowed(Wording.list(spots.keySet()))
                    .mend(problems.didYouMean(name.text(), spots.keySet(), "")));
        } else if (form == Form.REMOVE) {
            spot.set(Optional.empty());
            spots.remove(name.text());
            removed.put(name.text(), name);
        } else {
            spot.merge(change.without(Set.of(form.word())));
        }
    }

    private void add(MappingNode entry) {
        List<Form> kinds =
                Stream.concat(Form.SUPPORTS.stream(), Form.RESOURCES.stream()).toList();
        EntryKind.require(entry, kinds, "add", problems).ifPresent(kind -> {
            put(entry, Form.SUPPORTS.contains(kind) ? supports : resources, List.of(kind));
            EntryKind.nameOf(entry, kind).ifPresent(removed::remove);
        });
    }

    private boolean unfeed(String id) {
        return keepers.removeIf(entry -> EntryKind.nameOf(entry, Form.FEED).equals(Optional.of(id)));
    }

    private List<String> fed() {
        return keepers.stream()
                .flatMap(entry -> EntryKind.nameOf(entry, Form.FEED).stream())
                .distinct()
                .toList();
    }

    private void reportWhatHangsOnRemoved(List<MappingNode> keptSupports, List<MappingNode> keptResources) {
        Map<String, Set<String>> users = new LinkedHashMap<>();
        Stream.concat(keptSupports.stream(), keptResources.stream())
                .forEach(entry -> References.in(entry).values().forEach(words -> users.computeIfAbsent(
                                words.id(), id -> new LinkedHashSet<>())
                        .add(ownName(entry))));
        List<String> fed = fed();
        for (ScalarNode name : removed.values()) {
            Set<String> hanging = users.getOrDefault(name.text(), Set.of());
            if (!hanging.isEmpty()) {
                problems.add(Problem.at(name.place(), name.shown() + " cannot be removed while others hang on it")
                        .found(Wording.list(hanging))
                        .mend("move or remove these too"));
            }
            if (fed.contains(name.text())) {
                problems.add(Problem.at(name.place(), name.shown() + " cannot be removed while it is fed")
                        .mend("add the change {unfeed: " + name.text() + "}"));
            }
        }
    }

    private static String ownName(MappingNode entry) {
        return Stream.concat(Form.SUPPORTS.stream(), Form.RESOURCES.stream())
                .flatMap(kind -> EntryKind.nameOf(entry, kind).stream())
                .findFirst()
                .orElse("an entry without a name");
    }
}
