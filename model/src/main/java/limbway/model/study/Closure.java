package limbway.model.study;

import limbway.model.enclosure.OpenHours;

/**
 * Hours in which animals cannot use a place.
 *
 * @param resource id of the place
 * @param hours when it is shut
 * @param cleaned true if the bedding is taken out then
 */
public record Closure(String resource, OpenHours hours, boolean cleaned) {}
