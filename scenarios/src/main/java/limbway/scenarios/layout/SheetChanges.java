package limbway.scenarios.layout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import limbway.scenarios.entry.Fields;
import limbway.scenarios.entry.Form;
import limbway.scenarios.entry.References;
import limbway.scenarios.entry.Section;
import limbway.scenarios.entry.Values;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Applies the changes of a variant to the entries of the base, one after the other. */
public final class SheetChanges {

    /** For a key of a change, the keys that no longer hold because it says the same in another way. */
    private static final Map<String, Set<String>> REPLACED = Map.of(
            "at", Set.of("on", "outline"),
            "on", Set.of("at", "outline"),
            "outline", Set.of("at", "on", "corners", "line", "thickness", "over", "size", "turn", "rise", "shift"),
            "corners", Set.of("outline", "height", "from", "to", "bottom", "top", "over", "size", "rise", "shift"),
            "over", Set.of("corners", "outline", "height"),
            "line", Set.of("outline"),
            "from", Set.of("corners", "outline"),
            "to", Set.of("corners", "outline"),
            "sag", Set.of("length"),
            "length", Set.of("sag"));

    private static final int MOST_CHANGES = 500;

    /** What keepers do beside feeding. */
    private static final List<Form> OTHER_JOBS =
            Form.KEEPERS.stream().filter(form -> form != Form.FEED).toList();

    /** An entry in one of the lists; the slot of a removed entry is empty, so that no other moves. */
    private record Spot(List<Optional<MappingNode>> list, int index) {

        void set(Optional<MappingNode> entry) {
            list.set(index, entry);
        }

        /** A move by coordinates drops an earlier place on a support, and the other way round. */
        void merge(MappingNode changes) {
            set(list.get(index).map(old -> merged(old, changes)));
        }
    }

    /** An entry with some keys written anew, without those that said the same in another way. */
    static MappingNode merged(MappingNode old, MappingNode changes) {
        Set<String> replaced = new TreeSet<>();
        changes.keys().forEach(key -> replaced.addAll(REPLACED.getOrDefault(key, Set.of())));
        return old.without(replaced).with(changes);
    }

    /** The keys that no longer hold once a key is written anew. */
    static Set<String> replacedBy(String key) {
        return REPLACED.getOrDefault(key, Set.of());
    }

    /** What keepers do with one place, or staff of one name. */
    private record Job(Form form, String name) {

        static Optional<Job> of(MappingNode entry) {
            return EntryKind.of(entry, Form.KEEPERS)
                    .flatMap(form -> EntryKind.nameOf(entry, form).map(name -> new Job(form, name)));
        }
    }

    private final Problems problems;
    private final Values values;
    private final Map<Section, List<Optional<MappingNode>>> entries = new EnumMap<>(Section.class);
    private final List<MappingNode> keepers;
    private final Map<String, Spot> spots = new LinkedHashMap<>();
    private final Map<String, ScalarNode> removed = new LinkedHashMap<>();
    private final List<MappingNode> visitors;
    private final Set<Job> putAnew = new LinkedHashSet<>();

    /**
     * Starts from a sheet, which is not changed itself.
     *
     * @param base the entries of the base
     * @param problems where mistakes go
     */
    public SheetChanges(Sheet base, Problems problems) {
        this.problems = problems;
        this.values = new Values(problems);
        for (Section section : Section.values()) {
            entries.put(section, new ArrayList<>());
            base.in(section).forEach(entry -> put(entry, section));
        }
        this.keepers = new ArrayList<>(base.keepers());
        this.visitors = base.visitors();
    }

    private void put(MappingNode entry, Section section) {
        List<Optional<MappingNode>> list = entries.get(section);
        list.add(Optional.of(entry));
        EntryKind.of(entry, section.forms())
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
        Map<Section, List<MappingNode>> kept = new EnumMap<>(Section.class);
        entries.forEach((section, spotted) ->
                kept.put(section, spotted.stream().flatMap(Optional::stream).toList()));
        if (!removed.isEmpty()) {
            reportWhatHangsOnRemoved(
                    kept.values().stream().flatMap(List::stream).toList());
        }
        return new Sheet(kept, keepers, visitors, changes.place(), changes.place());
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
        if (Form.KEEPERS.contains(form)) {
            Job.of(change).filter(putAnew::add).ifPresent(this::end);
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
            end(List.of(Form.FEED), name, "nobody feeds " + name.shown());
            return;
        }
        if (form == Form.STOP) {
            end(OTHER_JOBS, name, "nobody beds, shuts or cleans " + name.shown() + ", and no staff are called so");
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
        EntryKind.require(entry, Section.allForms(), "add", problems).ifPresent(kind -> {
            for (Section section : Section.values()) {
                if (section.forms().contains(kind)) {
                    put(entry, section);
                }
            }
            EntryKind.nameOf(entry, kind).ifPresent(removed::remove);
        });
    }

    private void end(Job job) {
        keepers.removeIf(entry -> Job.of(entry).equals(Optional.of(job)));
    }

    private void end(List<Form> forms, ScalarNode name, String headline) {
        List<String> known = named(forms);
        if (!known.contains(name.text())) {
            problems.add(Problem.at(name.place(), headline)
                    .allowed(Wording.list(known))
                    .mend(problems.didYouMean(name.text(), known, "take this change out")));
        }
        forms.forEach(form -> end(new Job(form, name.text())));
    }

    /** Names in the entries of keepers of some kinds. */
    private List<String> named(List<Form> forms) {
        return keepers.stream()
                .flatMap(entry -> Job.of(entry).stream())
                .filter(job -> forms.contains(job.form()))
                .map(Job::name)
                .distinct()
                .toList();
    }

    private void reportWhatHangsOnRemoved(List<MappingNode> kept) {
        Map<String, Set<String>> users = new LinkedHashMap<>();
        for (MappingNode entry : kept) {
            for (String needed : References.needed(entry)) {
                users.computeIfAbsent(needed, id -> new LinkedHashSet<>()).add(ownName(entry));
            }
        }
        List<String> fed = named(List.of(Form.FEED));
        List<String> caredFor = named(Form.CARE);
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
            if (caredFor.contains(name.text())) {
                problems.add(Problem.at(
                                name.place(), name.shown() + " cannot be removed while it is bedded, shut or cleaned")
                        .mend("add the change {stop: " + name.text() + "}"));
            }
        }
    }

    private static String ownName(MappingNode entry) {
        return EntryKind.of(entry, Section.allForms())
                .flatMap(kind -> EntryKind.nameOf(entry, kind))
                .orElse("an entry without a name");
    }
}
