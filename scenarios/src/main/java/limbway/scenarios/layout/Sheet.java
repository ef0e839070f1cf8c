package limbway.scenarios.layout;

import java.util.List;

import limbway.scenarios.format.MappingNode;

/**
 * The entries that declare one layout, not yet read.
 *
 * @param supports entries under {@code supports}, and the trees of a survey
 * @param resources entries under {@code resources}
 * @param keepers entries under {@code keepers}
 */
public record Sheet(List<MappingNode> supports, List<MappingNode> resources, List<MappingNode> keepers) {

    /** Keeps copies of the lists. */
    public Sheet {
        supports = List.copyOf(supports);
        resources = List.copyOf(resources);
        keepers = List.copyOf(keepers);
    }
}
