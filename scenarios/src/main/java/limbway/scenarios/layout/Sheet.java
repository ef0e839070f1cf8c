package limbway.scenarios.layout;

import java.util.List;

import limbway.scenarios.format.MappingNode;
import limbway.scenarios.problem.Place;

/**
 * The entries that declare one layout, not yet read.
 *
 * @param supports entries under {@code supports}, and the trees of a survey
 * @param resources entries under {@code resources}
 * @param keepers entries under {@code keepers}
 * @param resourcesPlace where to point when a resource is missing
 * @param keepersPlace where to point when feedings are missing
 */
public record Sheet(
        List<MappingNode> supports,
        List<MappingNode> resources,
        List<MappingNode> keepers,
        Place resourcesPlace,
        Place keepersPlace) {

    /** Keeps copies of the lists. */
    public Sheet {
        supports = List.copyOf(supports);
        resources = List.copyOf(resources);
        keepers = List.copyOf(keepers);
    }
}
