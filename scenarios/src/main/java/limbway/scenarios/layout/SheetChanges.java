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

    private final Problems problems;
    private final Values values;
    private final List<MappingNode> supports;
    private final List<MappingNode> resources;
    private final List<MappingNode> keepers;
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
        this.supports = new ArrayList<>(base.supports());
        this.resources = new ArrayList<>(base.resources());
        this.keepers = new ArrayList<>(base.keepers());
    }

    /**
     * Applies all changes of a list.
     *
     * @param changes the list in the scenario
     * @return the changed entries
     */
    public Sheet apply(Node changes) {
        for (MappingNode change : values.mappings(changes, "changes")) {
            EntryKind.require(change, Form.CHANGES, "changes", problems).ifPresent(form -> apply(change, form));
        }
        removed.values().forEach(this::reportWhatHangsOn);
        return new Sheet(supports, resources, keepers);
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
        switch (form) {
            case UNFEED -> {
                if (!unfeed(name.text())) {
                    problems.add(Problem.at(name.place(), "nobody feeds " + name.shown())
                            .allowed(Wording.list(fed()))
                            .mend(problems.didYouMean(name.text(), fed(), "take this change out")));
                }
            }
            case REMOVE ->
                find(name).ifPresent(spot -> {
                    spot.list.remove(spot.index);
                    removed.put(name.text(), name);
                });
            default -> find(name).ifPresent(spot -> spot.replaceBy(change.without(Set.of(form.word()))));
        }
    }

    private void add(MappingNode entry) {
        List<Form> kinds =
                Stream.concat(Form.SUPPORTS.stream(), Form.RESOURCES.stream()).toList();
        EntryKind.require(entry, kinds, "add", problems).ifPresent(kind -> {
            (Form.SUPPORTS.contains(kind) ? supports : resources).add(entry);
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

    private record Spot(List<MappingNode> list, int index) {

        /** A move by coordinates drops an earlier place on a support, and the other way round. */
        void replaceBy(MappingNode changes) {
            MappingNode old = list.get(index);
            boolean moved = changes.keys().stream().anyMatch(WHEREABOUTS::contains);
            list.set(index, (moved ? old.without(WHEREABOUTS) : old).with(changes));
        }
    }

    private Optional<Spot> find(ScalarNode name) {
        Set<String> known = new LinkedHashSet<>();
        for (List<MappingNode> list : List.of(supports, resources)) {
            List<Form> kinds = list == supports ? Form.SUPPORTS : Form.RESOURCES;
            for (int i = 0; i < list.size(); i++) {
                MappingNode entry = list.get(i);
                Optional<String> id = EntryKind.of(entry, kinds).flatMap(kind -> EntryKind.nameOf(entry, kind));
                if (id.equals(Optional.of(name.text()))) {
                    return Optional.of(new Spot(list, i));
                }
                id.ifPresent(known::add);
            }
        }
        problems.add(Problem.at(name.place(), "there is nothing called " + name.shown() + " to change")
                .allowed(Wording.list(known))
                .mend(problems.didYouMean(name.text(), known, "")));
        return Optional.empty();
    }

    private void reportWhatHangsOn(ScalarNode name) {
        List<String> users = new ArrayList<>();
        for (MappingNode entry :
                Stream.concat(supports.stream(), resources.stream()).toList()) {
            for (String key : List.of("on", "at", "from", "to")) {
                Optional<String> words = entry.find(key).flatMap(EntryKind::word);
                if (words.isPresent() && (words.get() + " ").startsWith(name.text() + " ")) {
                    users.add(ownName(entry));
                    break;
                }
            }
        }
        if (!users.isEmpty()) {
            problems.add(Problem.at(name.place(), name.shown() + " cannot be removed while others hang on it")
                    .found(Wording.list(users))
                    .mend("move or remove these too"));
        }
        if (fed().contains(name.text())) {
            problems.add(Problem.at(name.place(), name.shown() + " cannot be removed while it is fed")
                    .mend("add the change {unfeed: " + name.text() + "}"));
        }
    }

    private static String ownName(MappingNode entry) {
        return Stream.concat(Form.SUPPORTS.stream(), Form.RESOURCES.stream())
                .flatMap(kind -> EntryKind.nameOf(entry, kind).stream())
                .findFirst()
                .orElse("an entry without a name");
    }
}
