package limbway.scenarios.entry;

import java.time.LocalTime;
import java.util.List;

import limbway.model.study.FeedingMethod;
import limbway.scenarios.format.ScalarNode;

/**
 * Food put out in one place at one or more times of the day, as declared.
 *
 * @param resource name of the food place, with where it is written
 * @param times clock times
 * @param energyKj energy of each feeding [kJ]
 * @param method how it is put out
 * @param handlingMin work that each portion costs [min]; 0 unless it is a puzzle
 */
public record FeedingEntry(
        ScalarNode resource, List<LocalTime> times, double energyKj, FeedingMethod method, double handlingMin) {

    /** Keeps a copy of the list. */
    public FeedingEntry {
        times = List.copyOf(times);
    }
}
