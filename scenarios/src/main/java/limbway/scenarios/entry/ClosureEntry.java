package limbway.scenarios.entry;

import limbway.model.enclosure.OpenHours;
import limbway.scenarios.format.ScalarNode;

/**
 * Hours in which a place cannot be used, as declared.
 *
 * @param resource name of the place, with where it is written
 * @param hours when it is shut
 * @param cleaned true if its bedding is taken out
 */
public record ClosureEntry(ScalarNode resource, OpenHours hours, boolean cleaned) {}
