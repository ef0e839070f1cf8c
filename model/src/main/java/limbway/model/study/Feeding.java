package limbway.model.study;

import java.time.LocalTime;

/**
 * Food put out at one place at one time of every day.
 *
 * @param resource id of a food place
 * @param at clock time
 * @param energyKj metabolisable energy put out [kJ], above 0
 * @param method how it is put out
 * @param handlingMin time that each portion costs before it can be eaten [min], 0 or more; 0 unless it is a puzzle
 */
public record Feeding(String resource, LocalTime at, double energyKj, FeedingMethod method, double handlingMin) {

    /**
     * Food put out in a heap.
     *
     * @param resource id of a food place
     * @param at clock time
     * @param energyKj metabolisable energy put out [kJ], above 0
     */
    public Feeding(String resource, LocalTime at, double energyKj) {
        this(resource, at, energyKj, FeedingMethod.HEAP, 0);
    }
}
