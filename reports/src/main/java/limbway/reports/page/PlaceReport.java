package limbway.reports.page;

import java.util.List;

import limbway.model.study.Variant;
import limbway.reports.data.PlaceInfo;
import limbway.reports.measure.placement.PlacingAnswer;

/**
 * Everything that is told of a placing.
 *
 * @param info how it was made
 * @param answer what came out
 * @param before the layout as it stands
 * @param animals names of the animals, in the order of the study
 */
public record PlaceReport(PlaceInfo info, PlacingAnswer answer, Variant before, List<String> animals) {

    /** Keeps a copy of the list. */
    public PlaceReport {
        animals = List.copyOf(animals);
    }
}
