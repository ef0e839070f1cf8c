package limbway.scenarios.entry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import limbway.scenarios.entry.PlaceWords.OnNamed;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problems;

/** Finds out what an entry hangs on, also where the rest of it cannot be read. */
public final class References {

    private static final List<String> KEYS = List.of("on", "at", "from", "to");

    private References() {}

    /**
     * What a key that says a place is called in messages.
     *
     * @param key one of from, to, on, at
     * @return start, end or place
     */
    public static String label(String key) {
        return switch (key) {
            case "from" -> "start";
            case "to" -> "end";
            default -> "place";
        };
    }

    /**
     * The supports and platforms that an entry names as its places.
     *
     * @param entry any entry under supports or resources
     * @return words by key; places that cannot be read or are coordinates are left out
     */
    public static Map<String, OnNamed> in(MappingNode entry) {
        Map<String, OnNamed> found = new LinkedHashMap<>();
        for (String key : KEYS) {
            Optional<Node> node = entry.find(key);
            if (node.isPresent()) {
                // mistakes in the words are reported by whoever reads the entry itself
                PlaceReader quiet = new PlaceReader(new Problems());
                quiet.anywhere(node.get(), key)
                        .filter(OnNamed.class::isInstance)
                        .ifPresent(words -> found.put(key, (OnNamed) words));
            }
        }
        return found;
    }

    /**
     * Everything that must be there for an entry to be there.
     *
     * @param entry any entry of a layout
     * @return names of supports and platforms that carry it, of the panel or wall that it opens, and of the
     *     deck that it lies over
     */
    public static List<String> needed(MappingNode entry) {
        List<String> names = new ArrayList<>();
        in(entry).values().forEach(words -> names.add(words.id()));
        for (String key : List.of("in", "over")) {
            entry.find(key)
                    .filter(ScalarNode.class::isInstance)
                    .ifPresent(node -> names.add(((ScalarNode) node).text().strip()));
        }
        return names;
    }
}
