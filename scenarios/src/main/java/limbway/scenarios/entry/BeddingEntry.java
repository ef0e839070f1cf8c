package limbway.scenarios.entry;

import java.time.LocalTime;
import java.util.List;

import limbway.scenarios.format.ScalarNode;

/**
 * Bedding put out in one place at one or more times of the day, as declared.
 *
 * @param resource name of the place, with where it is written
 * @param times clock times
 * @param amount how much, above 0 to 1
 */
public record BeddingEntry(ScalarNode resource, List<LocalTime> times, double amount) {

    /** Keeps a copy of the list. */
    public BeddingEntry {
        times = List.copyOf(times);
    }
}
