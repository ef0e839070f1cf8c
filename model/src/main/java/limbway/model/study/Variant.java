package limbway.model.study;

import java.util.List;
import java.util.Set;

import limbway.model.enclosure.Enclosure;

/**
 * One layout of the enclosure, with the keepers' plan that belongs to it.
 *
 * @param name shown name, unique within the study
 * @param note what it is meant to show, in the scenario's words, or empty
 * @param enclosure what stands there
 * @param keeping what people do there
 * @param added ids of the supports, platforms, panels and resources that are not as in the base layout; empty for the base
 */
public record Variant(String name, String note, Enclosure enclosure, Keeping keeping, Set<String> added) {

    /** Keeps a copy of the ids. */
    public Variant {
        added = Set.copyOf(added);
    }

    /**
     * A base layout in which nothing is done but feeding.
     *
     * @param name shown name, unique within the study
     * @param note what it is meant to show, in the scenario's words, or empty
     * @param enclosure what stands there
     * @param feedings what the keepers put out, in order of time
     */
    public Variant(String name, String note, Enclosure enclosure, List<Feeding> feedings) {
        this(name, note, enclosure, Keeping.feeding(feedings), Set.of());
    }

    /**
     * What the keepers put out.
     *
     * @return feedings in order of time
     */
    public List<Feeding> feedings() {
        return keeping.feedings();
    }
}
