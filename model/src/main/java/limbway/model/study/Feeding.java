package limbway.model.study;

import java.time.LocalTime;

/**
 * Food put out at one place at one time of every day.
 *
 * @param resource id of a food place
 * @param at clock time
 * @param energyKj metabolisable energy put out [kJ], above 0
 */
public record Feeding(String resource, LocalTime at, double energyKj) {}
