package limbway.scenarios.layout;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import limbway.scenarios.entry.Section;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.problem.Place;

/**
 * The entries that declare one layout, not yet read.
 *
 * @param entries entries of each list; the trees of a survey are among the supports
 * @param keepers entries under {@code keepers}
 * @param visitors entries under {@code visitors}
 * @param resourcesPlace where to point when a resource is missing
 * @param keepersPlace where to point when feedings are missing
 */
public record Sheet(
        Map<Section, List<MappingNode>> entries,
        List<MappingNode> keepers,
        List<MappingNode> visitors,
        Place resourcesPlace,
        Place keepersPlace) {

    /** Keeps copies of the lists. */
    public Sheet {
        Map<Section, List<MappingNode>> copy = new EnumMap<>(Section.class);
        for (Section section : Section.values()) {
            copy.put(section, List.copyOf(entries.getOrDefault(section, List.of())));
        }
        entries = Collections.unmodifiableMap(copy);
        keepers = List.copyOf(keepers);
        visitors = List.copyOf(visitors);
    }

    /**
     * The entries of one list.
     *
     * @param section which list
     * @return entries in their order
     */
    public List<MappingNode> in(Section section) {
        return entries.get(section);
    }
}
