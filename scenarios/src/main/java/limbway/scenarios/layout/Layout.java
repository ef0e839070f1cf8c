package limbway.scenarios.layout;

import java.util.List;

import limbway.model.enclosure.Enclosure;
import limbway.model.study.Feeding;

/**
 * One layout, read.
 *
 * @param enclosure what stands there
 * @param feedings what the keepers put out, in order of time
 */
public record Layout(Enclosure enclosure, List<Feeding> feedings) {

    /** Keeps a copy of the list. */
    public Layout {
        feedings = List.copyOf(feedings);
    }
}
