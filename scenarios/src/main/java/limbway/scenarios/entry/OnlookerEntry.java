package limbway.scenarios.entry;

import limbway.model.enclosure.OpenHours;
import limbway.scenarios.entry.PlaceWords.Coordinates;
import limbway.scenarios.format.ScalarNode;

/**
 * People at one place, as declared: staff, or visitors who look in.
 *
 * @param id name of the place, with where it is written
 * @param at where they stand, or where their eyes are
 * @param hours when they are there
 */
public record OnlookerEntry(ScalarNode id, Coordinates at, OpenHours hours) {}
