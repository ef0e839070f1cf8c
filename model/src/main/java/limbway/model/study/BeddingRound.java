package limbway.model.study;

import java.time.LocalTime;

/**
 * Bedding put out at one place at one time of every day; it lies there until the place is cleaned.
 *
 * @param resource id of a place to rest or sleep
 * @param at clock time
 * @param amount how much, above 0 (none) to 1 (as much as a deep nest takes)
 */
public record BeddingRound(String resource, LocalTime at, double amount) {}
