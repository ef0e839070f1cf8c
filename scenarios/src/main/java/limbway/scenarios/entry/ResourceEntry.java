package limbway.scenarios.entry;

import limbway.model.enclosure.ResourceKind;
import limbway.scenarios.problem.Place;

/**
 * A place that an animal goes to, as declared.
 *
 * @param id name
 * @param what kind and name, for messages
 * @param place where it is declared
 * @param kind what it is gone to for
 * @param where where it is
 * @param stalls how many can use it at once
 * @param bedding how much bedding always lies there, 0 to 1
 */
public record ResourceEntry(
        String id, String what, Place place, ResourceKind kind, PlaceWords where, int stalls, double bedding)
        implements Entry {}
