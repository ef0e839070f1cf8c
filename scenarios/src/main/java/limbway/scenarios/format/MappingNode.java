package limbway.scenarios.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import limbway.scenarios.problem.Place;

/**
 * Keys with values, written on lines of their own or in braces.
 *
 * @param place where it begins
 * @param entries keys with values, in order, each key once
 */
public record MappingNode(Place place, List<Entry> entries) implements Node {

    /**
     * One key and its value.
     *
     * @param key the word before the colon
     * @param value what follows
     */
    public record Entry(ScalarNode key, Node value) {}

    /** Keeps a copy of the list. */
    public MappingNode {
        entries = List.copyOf(entries);
    }

    /**
     * Looks a value up.
     *
     * @param key word before the colon
     * @return the value, or empty if the key is not there
     */
    public Optional<Node> find(String key) {
        return entries.stream()
                .filter(entry -> entry.key().text().equals(key))
                .findFirst()
                .map(Entry::value);
    }

    /**
     * The keys.
     *
     * @return the words before the colons, in order
     */
    public List<String> keys() {
        return entries.stream().map(entry -> entry.key().text()).toList();
    }

    /**
     * The same keys and values without some.
     *
     * @param keys keys to leave out
     * @return a copy
     */
    public MappingNode without(Set<String> keys) {
        return new MappingNode(
                place,
                entries.stream()
                        .filter(entry -> !keys.contains(entry.key().text()))
                        .toList());
    }

    /**
     * The same with other values: those of a second mapping replace those of the same key, or are added at the end.
     *
     * @param changes what to put in
     * @return a mapping that stands where {@code changes} stands
     */
    public MappingNode with(MappingNode changes) {
        List<Entry> merged = new ArrayList<>();
        for (Entry entry : entries) {
            merged.add(changes.entries.stream()
                    .filter(change -> change.key().text().equals(entry.key().text()))
                    .findFirst()
                    .orElse(entry));
        }
        for (Entry change : changes.entries) {
            if (find(change.key().text()).isEmpty()) {
                merged.add(change);
            }
        }
        return new MappingNode(changes.place, merged);
    }

    @Override
    public String shown() {
        return entries.isEmpty() ? "nothing" : "keys and values, the first is " + keys().get(0);
    }
}
