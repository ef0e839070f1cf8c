package limbway.model.study;

import limbway.model.enclosure.OpenHours;
import limbway.model.geometry.Point;

/**
 * A place from which visitors look in.
 *
 * @param id name, unique within the scenario
 * @param at where their eyes are
 * @param hours when visitors are there
 */
public record Viewpoint(String id, Point at, OpenHours hours) {}
