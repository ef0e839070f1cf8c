package limbway.reports.measure.criterion;

import java.util.List;
import java.util.Optional;

import limbway.model.study.Study;
import limbway.model.study.Variant;

/** What a scenario must say so that a criterion can have a value at all. */
public final class Givens {

    private Givens() {}

    /**
     * Why a criterion has no value in some layout, whatever happens there.
     *
     * @param criterion name of a criterion
     * @param study the scenario
     * @param layouts the layouts that are judged
     * @return what is missing, such as "the scenario has no weather"; empty if nothing is known to be
     */
    public static Optional<String> missing(String criterion, Study study, List<Variant> layouts) {
        return switch (criterion) {
            case "hours_in_heat" ->
                study.climate().isEmpty() ? Optional.of("the scenario has no weather") : Optional.empty();
            case "visible_share" ->
                layouts.stream()
                        .filter(layout -> layout.keeping().viewpoints().isEmpty())
                        .findFirst()
                        .map(layout -> "the layout " + layout.name() + " has no viewpoints");
            default -> Optional.empty();
        };
    }
}
