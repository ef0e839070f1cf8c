package limbway.scenarios.layout;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import limbway.scenarios.entry.Form;
import limbway.scenarios.entry.Section;
import limbway.scenarios.format.ListNode;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.problem.Place;

/** The entries of a scenario that have names, so that single keys of them can be written anew. */
public final class NamedEntries {

    private static final String VARIANTS = "variants";

    private final List<Found> all = new ArrayList<>();

    /**
     * An entry with a name.
     *
     * @param list key of the list in which it stands, or its own key at the top of the scenario
     * @param form which keys it may have
     * @param name its name
     * @param entry the entry itself
     */
    public record Found(String list, Form form, String name, MappingNode entry) {

        /**
         * The keys that may be written anew.
         *
         * @return all of its kind but the one that holds the name
         */
        public List<String> keys() {
            String own = form == Form.ANIMAL ? "name" : form.word();
            return form.keys().stream().filter(key -> !key.equals(own)).toList();
        }
    }

    /**
     * Looks through a scenario.
     *
     * @param scenario its root
     */
    public NamedEntries(MappingNode scenario) {
        for (Section section : Section.values()) {
            addAll(scenario, section.key(), section.forms());
        }
        addAll(scenario, "keepers", Form.KEEPERS);
        addAll(scenario, "visitors", List.of(Form.VIEWPOINT));
        addAll(scenario, "bodies", List.of(Form.BODY));
        for (MappingNode animal : entries(scenario, "animals")) {
            animal.find("name")
                    .flatMap(EntryKind::word)
                    .ifPresent(name -> all.add(new Found("animals", Form.ANIMAL, name, animal)));
        }
        for (Form form : List.of(Form.WEATHER, Form.SITE)) {
            scenario.find(form.word())
                    .filter(MappingNode.class::isInstance)
                    .ifPresent(node -> all.add(new Found(form.word(), form, form.word(), (MappingNode) node)));
        }
        for (MappingNode variant : entries(scenario, VARIANTS)) {
            for (MappingNode change : entries(variant, "changes")) {
                change.find("add")
                        .filter(MappingNode.class::isInstance)
                        .map(MappingNode.class::cast)
                        .ifPresent(added -> add(added, VARIANTS, Section.allForms()));
            }
        }
    }

    private void addAll(MappingNode scenario, String list, List<Form> forms) {
        entries(scenario, list).forEach(entry -> add(entry, list, forms));
    }

    private void add(MappingNode entry, String list, List<Form> forms) {
        EntryKind.of(entry, forms).ifPresent(form -> EntryKind.nameOf(entry, form)
                .ifPresent(name -> all.add(new Found(list, form, name, entry))));
    }

    private static List<MappingNode> entries(MappingNode node, String key) {
        List<MappingNode> found = new ArrayList<>();
        if (node.find(key).orElse(node) instanceof ListNode list) {
            for (Node item : list.items()) {
                if (item instanceof MappingNode entry) {
                    found.add(entry);
                }
            }
        }
        return found;
    }

    /**
     * Entries of a name.
     *
     * @param name a name
     * @return those of the scenario itself; only where there is none, those that variants add
     */
    public List<Found> called(String name) {
        List<Found> found =
                all.stream().filter(entry -> entry.name().equals(name)).toList();
        List<Found> drawn =
                found.stream().filter(entry -> !entry.list().equals(VARIANTS)).toList();
        return drawn.isEmpty() ? found : drawn;
    }

    /**
     * All names.
     *
     * @return each once, in the order of the lists
     */
    public Set<String> names() {
        Set<String> names = new LinkedHashSet<>();
        all.forEach(entry -> names.add(entry.name()));
        return names;
    }

    /**
     * Whether two keys of one entry say the same in different ways, so that both cannot be written anew.
     *
     * @param key a key
     * @param other another
     * @return true for the same key, and for such as {@code at} and {@code on}
     */
    public static boolean exclude(String key, String other) {
        return key.equals(other)
                || SheetChanges.replacedBy(key).contains(other)
                || SheetChanges.replacedBy(other).contains(key);
    }

    /**
     * A scenario in which some keys of some entries are written anew.
     *
     * @param node the scenario, or a part of it
     * @param edits the new keys and values by the place of the entry
     * @return a copy; entries stand where their new values stand
     */
    public static Node edited(Node node, Map<Place, List<MappingNode>> edits) {
        if (node instanceof ListNode list) {
            return new ListNode(
                    list.place(),
                    list.items().stream().map(item -> edited(item, edits)).toList());
        }
        if (node instanceof MappingNode mapping) {
            MappingNode now = new MappingNode(
                    mapping.place(),
                    mapping.entries().stream()
                            .map(entry -> new MappingNode.Entry(entry.key(), edited(entry.value(), edits)))
                            .toList());
            for (MappingNode edit :
                    Optional.ofNullable(edits.get(mapping.place())).orElse(List.of())) {
                now = SheetChanges.merged(now, edit);
            }
            return now;
        }
        return node;
    }
}
