package limbway.model.study;

import limbway.model.enclosure.OpenHours;
import limbway.model.geometry.Point;

/**
 * Hours in which staff stand at a place that animals can see.
 *
 * @param id name of the place, unique within the scenario
 * @param at where they stand
 * @param hours when
 */
public record Attendance(String id, Point at, OpenHours hours) {}
