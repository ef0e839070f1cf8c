package limbway.model.study;

import java.util.List;

import limbway.model.enclosure.Enclosure;

/**
 * One layout of the enclosure, with the feeding plan that belongs to it.
 *
 * @param name shown name, unique within the study
 * @param note what it is meant to show, in the scenario's words, or empty
 * @param enclosure what stands there
 * @param feedings what the keepers put out, in order of time
 */
public record Variant(String name, String note, Enclosure enclosure, List<Feeding> feedings) {

    /** Keeps a copy of the list. */
    public Variant {
        feedings = List.copyOf(feedings);
    }
}
